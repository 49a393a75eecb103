using System.Globalization;
using System.Text.RegularExpressions;
using Jumpwright.App.Wording;
using Jumpwright.Paper;
using Jumpwright.Quantities;
using Jumpwright.Trials;
using UglyToad.PdfPig;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>Inches and pounds on pages and cards; files, API and store stay SI.</summary>
public class UnitsTests
{
    [Fact]
    public async Task InInchesAndPounds_PagesAndCardsSpeakThem_AndTheApiStaysInMetres()
    {
        await using SquadSite site = await SquadSite.Open();
        site.Plan();
        string planned = App.Contracts.PlanJson.Write(site.Desk.Book.PlanOrNull!.Plan);
        string csv = (await site.Get("/api/export/measures.csv")).Text;
        string metric = (await site.Get("/athletes/a01")).Text;
        Assert.Contains("66 kg", metric);

        await site.Post("/settings/speech", ("units", "InchPound"), ("language", "en"));
        string page = (await site.Get("/athletes/a01")).Text;
        Assert.Contains("145.5 lb", page);
        Measure height = site
            .Desk.Book.Find("a01")!
            .Profile.Current.First(e => e.Measure.Name == MeasureNames.JumpHeight)
            .Measure;
        double expected = Customary.InchesOf(height.Value);
        double doubt = Customary.InchesOf(height.StandardUncertainty);
        Assert.Contains(
            Regex.Matches(page, @"(\d+\.\d+) ± (\d+\.\d+) in\b"),
            m =>
                Math.Abs(double.Parse(m.Groups[1].Value, CultureInfo.InvariantCulture) - expected) <= 0.06
                && Math.Abs(double.Parse(m.Groups[2].Value, CultureInfo.InvariantCulture) - doubt) <= 0.06
        );

        var (card, item) = site
            .Desk.Book.PlanOrNull!.Cards.SelectMany(c => c.Items.Select(i => (c, i)))
            .First(p => p.i.HeightOrLoad?.ToString().Contains(" in", StringComparison.Ordinal) == true);
        Assert.DoesNotContain(" cm", item.HeightOrLoad);
        using PdfDocument pdf = PdfDocument.Open(CardPdf.Render(card, CardPictures.None, CardPaper.A5));
        string printed = string.Concat(pdf.GetPages().Select(p => p.Text));
        Assert.Contains(Regex.Match(item.HeightOrLoad!, @"[\d.]+ in").Value.Replace(" ", ""), printed.Replace(" ", ""));

        Assert.Equal(planned, App.Contracts.PlanJson.Write(site.Desk.Book.PlanOrNull!.Plan));
        Assert.Equal(csv, (await site.Get("/api/export/measures.csv")).Text);
    }

    [Theory]
    [InlineData(0.371, 0.003, "14.61 ± 0.12 in")]
    [InlineData(0.254, 0.0254, "10.0 ± 1.0 in")]
    [InlineData(0.3, 0, "11.81 in")]
    public void Decimals_EndWhereTheDoubtBegins_InInchesToo(double metres, double doubt, string expected)
    {
        Speech.Use(new Speech("en", UnitSystem.InchPound));
        Assert.Equal(
            expected,
            MeasureWords.Value(new Measure(MeasureNames.JumpHeight, metres, Unit.Metre, doubt, "tape"))
        );
    }
}
