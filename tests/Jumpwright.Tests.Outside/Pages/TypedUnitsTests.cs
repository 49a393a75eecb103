using System.Globalization;
using System.Text.RegularExpressions;
using Jumpwright.App.Kit;
using Jumpwright.App.Wording;
using Jumpwright.Quantities;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>What is typed in inches and pounds: every field shows and takes the chosen unit, says it, and keeps metres and kilograms.</summary>
public sealed partial class TypedUnitsTests
{
    private const UnitSystem Metric = UnitSystem.Metric;
    private const UnitSystem Inches = UnitSystem.InchPound;

    /// <summary>Whatever a tape or a scale gives, typed in one unit, shown in the other and typed again as it is shown.</summary>
    [Theory]
    [InlineData("m", 3, 4, 120, 3)]
    [InlineData("cm", 300, 2, 120, 3)]
    [InlineData("kg", 400, 3, 900, 3)]
    public void Typed_ShownInTheOtherUnit_AndTypedAgain_IsTheSame(
        string unit,
        int mostMetric,
        int metricDecimals,
        int mostInches,
        int inchDecimals
    )
    {
        var random = new Random(20261130);
        for (int i = 0; i < 20_000; i++)
        {
            foreach (
                (int most, int decimals, UnitSystem from, UnitSystem to) in new[]
                {
                    (mostMetric, metricDecimals, Metric, Inches),
                    (mostInches, inchDecimals, Inches, Metric),
                }
            )
            {
                string typed = Math.Round((decimal)random.NextDouble() * most, random.Next(decimals + 1))
                    .ToString("0.######", CultureInfo.InvariantCulture);
                string shown = TypedAmount.In(typed, unit, from, to);
                string back = TypedAmount.In(shown, unit, to, from);
                Assert.True(typed == back, $"{typed} {unit} ({from}) was shown as {shown}, and came back as {back}");
                // And it is what it says: within a thousandth of a millimetre, a hundredth of a gram.
                double factor =
                    unit == "kg" ? Customary.KilogramsPerPound : Customary.MetresPerInch * (unit == "cm" ? 100 : 1);
                double si = double.Parse(from == Inches ? shown : typed, CultureInfo.InvariantCulture);
                double inches = double.Parse(from == Inches ? typed : shown, CultureInfo.InvariantCulture);
                Assert.Equal(
                    si,
                    inches * factor,
                    unit == "kg" ? 1.01e-5
                        : unit == "cm" ? 1.01e-4
                        : 1.01e-6
                );
            }
        }
    }

    [Theory]
    [InlineData("0.3", "m", "11.811")]
    [InlineData("0,3", "m", "11.811")]
    [InlineData("70", "kg", "154.3236")]
    [InlineData("45", "cm", "17.7165")]
    [InlineData("", "m", "")]
    [InlineData("tall", "m", "tall")]
    [InlineData("1e40", "m", "1e40")]
    [InlineData("0.25", "s", "0.25")]
    public void Metric_ShownInInchesAndPounds_AndWordsAsTheyAre(string typed, string unit, string shown) =>
        Assert.Equal(shown, TypedAmount.In(typed, unit, Metric, Inches));

    [Theory]
    [InlineData("0.8:45, 1.0:85", "0.8:45|1.0:85")]
    [InlineData("0.8:45,1.0:85", "0.8:45|1.0:85")]
    [InlineData("20:1,30:2", "20:1|30:2")]
    [InlineData("0,8:45; 1,0:85", "0.8:45|1.0:85")]
    [InlineData("0,8:45, 1,0:85", "0.8:45|1.0:85")]
    [InlineData("60:0,95\n80:0,78", "60:0.95|80:0.78")]
    [InlineData("", "")]
    public void Pairs_AreReadWithADecimalComma_AndNeverAsOtherNumbers(string typed, string read) =>
        Assert.Equal(read, string.Join('|', KitPairs.Of(typed).Select(p => $"{p.A}:{p.B}")));

    /// <summary>Every tool, its first set-up typed in inches and pounds: the same verdict and, but for rounding, the same numbers.</summary>
    [Fact]
    public void EveryCalculator_AskedInInches_AnswersAsInMetres()
    {
        foreach (KitTool tool in KitDesk.Tools)
        {
            string Start(string name) => tool.Fields.Single(f => f.Name == name).Start;
            Dictionary<string, string> inches = tool.Fields.ToDictionary(
                f => f.Name,
                f => KitUnits.In(f, Start, Metric, Inches)
            );
            KitAnswer metric = tool.Answer(new KitTyped(Start)).Require();
            KitAnswer asked = tool.Answer(
                    new KitTyped(name =>
                        KitUnits.In(tool.Fields.Single(f => f.Name == name), n => inches[n], Inches, Metric)
                    )
                )
                .Require();
            Assert.Equal(metric.Verdict, asked.Verdict);
            Assert.Equal(
                metric.Result.Values.Select(v => (v.Name, v.Value)),
                asked.Result.Values.Select(v => (v.Name, v.Value))
            );

            // What stands there first in inches is answered too, and is near what stands there in metres.
            KitAnswer first = tool.Answer(
                    new KitTyped(name =>
                        KitUnits.In(
                            tool.Fields.Single(f => f.Name == name),
                            n => KitUnits.Start(tool.Fields.Single(f => f.Name == n), Inches),
                            Inches,
                            Metric
                        )
                    )
                )
                .Require();
            Assert.Equal(metric.Result.Values.Length, first.Result.Values.Length);
        }
    }

    [Fact]
    public async Task KitPage_InInches_FieldsAxesAndVerdictSpeakThem_AndAnAddressKeepsItsUnits()
    {
        await using SquadSite site = await SquadSite.Open();
        string metric = (
            await site.Get("/kit?tool=load&athlete=70&jumps=0:0.36, 20:0.28, 40:0.20&from=0.20&to=0.30")
        ).Text;
        Assert.Contains("load, kg", metric);
        await site.Post("/settings/speech", ("units", "InchPound"), ("language", "en"));

        string inches = (
            await site.Get("/kit?tool=load&athlete=70&jumps=0:0.36, 20:0.28, 40:0.20&from=0.20&to=0.30")
        ).Text;
        Assert.Contains("load, lb", inches);
        Assert.Contains("height, in", inches);
        Assert.DoesNotContain("load, kg", inches);
        Assert.Contains(" value=\"154.3236\"", inches);
        Assert.Contains("0:14.1732, 44.09245:11.0236", inches);
        Assert.Contains("Jumps, load:height, lb:in", inches);
        // The dots of the drawing stand where they stood: only the numbers at the axes are others.
        Assert.Equal(Dots(metric), Dots(inches));

        string typed = (
            await site.Get("/kit?tool=box&units=InchPound&stature=70&athlete=154&height=14&sd=0.8&box=18")
        ).Text;
        Assert.Contains("name=\"box\" value=\"18\"", typed);
        Assert.Contains("A box of 18 in", typed);
        await site.Post("/settings/speech", ("units", "Metric"), ("language", "en"));
        string back = (
            await site.Get("/kit?tool=box&units=InchPound&stature=70&athlete=154&height=14&sd=0.8&box=18")
        ).Text;
        Assert.Contains("name=\"box\" value=\"0.4572\"", back);
        Assert.Contains("A box of 46 cm", back);
    }

    /// <summary>No field of any page is left that says metres, centimetres or kilograms once somebody reads inches and pounds.</summary>
    [Fact]
    public async Task EveryFieldOfEveryPage_SaysTheChosenUnit()
    {
        await using SquadSite site = await SquadSite.Open();
        string[] pages =
        [
            "/set-up",
            "/health/a01",
            "/import",
            "/settings/rules",
            "/exercises",
            .. KitDesk.Tools.Select(t => $"/kit?tool={t.Id}"),
        ];
        int metric = 0;
        foreach (string page in pages)
        {
            metric += MetricLabel().Count((await site.Get(page)).Text);
        }

        // A walk that meets no label that says a unit can't fail.
        Assert.InRange(metric, 25, 200);
        await site.Post("/settings/speech", ("units", "InchPound"), ("language", "en"));
        foreach (string page in pages)
        {
            string text = (await site.Get(page)).Text;
            Assert.Empty(MetricLabel().Matches(text).Select(m => $"{page}: {m.Value}"));
            Assert.DoesNotContain("/> kg", text);
        }
    }

    [Fact]
    public async Task TypedInPoundsAndInches_IsKeptInKilogramsAndMetres()
    {
        await using SquadSite site = await SquadSite.Open();
        await site.Post("/settings/speech", ("units", "InchPound"), ("language", "en"));
        (string, string) pounds = ("units", "InchPound");
        await site.Post(
            "/set-up/athlete",
            ("name", "Pat Pound"),
            ("body_mass_kg", "154"),
            ("stature_m", "70"),
            ("operated", "no"),
            pounds
        );
        string row = (
            await File.ReadAllLinesAsync(
                Path.Combine(site.Folder, "athletes.csv"),
                TestContext.Current.CancellationToken
            )
        )[^1];
        Assert.Contains(",69.85322,1.778,", row);

        (_, string no) = await site.Post(
            "/set-up/athlete",
            ("name", "Too Light"),
            ("body_mass_kg", "30"),
            ("operated", "no"),
            pounds
        );
        Assert.Contains("33.1 to 661.4 lb", no);
        Assert.Contains("value=\"30\"", no);

        await site.Post("/health/a01/body", ("mass", "150.5"), ("stature", ""), pounds);
        Assert.Equal(68.26565, site.Desk.Book.Find("a01")!.Athlete.BodyMassKg!.Value, 1e-5);
        await site.Post(
            "/health/a01/restriction",
            ("set_by", "Dr. Bone"),
            ("role", "doctor"),
            ("from", "2027-01-04"),
            ("endless", "yes"),
            ("whole", "yes"),
            ("drop", "12"),
            pounds
        );
        Assert.Contains("30.48 cm", site.Desk.Journal[^1].Json);

        await site.Post(
            "/settings/rules/limit",
            ("limit", "youth-drop"),
            ("value", "10"),
            ("who", "Coach"),
            ("reason", "test"),
            ("from", "2027-01-04"),
            ("until", "2027-01-10"),
            pounds
        );
        Assert.Equal(0.254, site.Desk.Book.Material.Squad.Overrides.Single(o => o.Limit == "youth-drop").Value, 1e-9);
    }

    private static string[] Dots(string page) => [.. Dot().Matches(page).Select(m => m.Value)];

    [GeneratedRegex("<circle cx=\"[^\"]*\" cy=\"[^\"]*\"", RegexOptions.None, 1000)]
    private static partial Regex Dot();

    [GeneratedRegex(
        "<label [^>]*>[^<]*, (m|cm|kg|kg or m/s|[^<, ]*:(m|kg)|(m|kg):[^<, ]*)</label>",
        RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex MetricLabel();
}
