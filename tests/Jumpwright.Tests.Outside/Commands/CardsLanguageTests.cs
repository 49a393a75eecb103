using Jumpwright.App.Commands;
using Jumpwright.App.Desk;
using Jumpwright.App.Settings;
using Jumpwright.Paper;
using Jumpwright.Plans;
using Jumpwright.Quantities;
using Jumpwright.Tests.Outside.Pages;
using Jumpwright.Tests.Outside.Paper;

namespace Jumpwright.Tests.Outside.Commands;

/// <summary>Cards that a command writes speak as the squad's pages are set.</summary>
[Collection("pages")]
public sealed class CardsLanguageTests(ServedDemo demo) : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("jumpwright-cards-").FullName;

    private PlannedWeek Week => demo.Desk.Book.PlanOrNull!;

    [Fact]
    public void WithoutSettings_TheyAreEnglishAndMetric()
    {
        CardText read = Written(HouseSettings.Standard);
        read.MustSay("Valid on this day only.");
        Assert.Matches(@"step off \d+ cm", read.All);
    }

    [Fact]
    public void AsThePagesAreSet_TheyAreGermanAndInInches()
    {
        CardText read = Written(new HouseSettings { Language = "de", Units = UnitSystem.InchPound });
        read.MustSay("Gilt nur an diesem Tag.");
        Assert.Matches(@"von \d+(,\d)? Zoll heruntertreten", read.All);
        read.MustNotSay("Valid on this day only.");
        Assert.DoesNotMatch(@"\d (cm|kg)\b", read.All);
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    /// <summary>The card of somebody who steps off a box.</summary>
    private CardText Written(HouseSettings settings)
    {
        PlannedSession session = Week.Plan.Sessions[0];
        string who = session.Athletes.First(a => a.Items.Any(i => i.Dose.DropHeightM is not null)).AthleteId;
        PlannedWeek one = Week with { Plan = Week.Plan with { Sessions = [session] } };
        CardFiles.Write(
            one,
            demo.Desk.Book.Material,
            settings,
            _folder,
            CardPaper.A5,
            () => { },
            TestContext.Current.CancellationToken
        );
        return CardText.Read(File.ReadAllBytes(Path.Combine(_folder, $"{session.Slot.Id}-{who}.pdf")));
    }
}
