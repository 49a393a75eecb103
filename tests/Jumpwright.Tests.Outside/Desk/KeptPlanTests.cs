using Jumpwright.App.Commands;
using Jumpwright.App.Contracts;
using Jumpwright.App.Desk;
using Jumpwright.App.Desk.Journals;
using Jumpwright.App.Wording;
using Jumpwright.Plans;
using Jumpwright.Quantities;
using Jumpwright.Sessions;
using Jumpwright.Storage.Stores;
using Jumpwright.Tests.Outside.Pages;
using NodaTime;

namespace Jumpwright.Tests.Outside.Desk;

/// <summary>
/// The laptop goes home in the evening. What was planned, printed and closed on Monday stands on Tuesday, and whatever came
/// meanwhile closes.
/// </summary>
public sealed class KeptPlanTests : IDisposable
{
    private readonly string _folder = OwnSquad.NewFolder(few: true);

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void APlan_IsThereAgain_WordForWord()
    {
        PlannedWeek made;
        using (FrontDesk desk = Opened(DemoCommand.Day))
        {
            desk.Plan(null, CancellationToken.None);
            made = desk.Book.PlanOrNull!;
        }

        using FrontDesk again = Opened(DemoCommand.Day);
        PlannedWeek read = again.Book.PlanOrNull!;
        Assert.False(again.PlanIsOld);
        Assert.Equal(PlanJson.Write(made.Plan), PlanJson.Write(read.Plan));
        Assert.Equal(made.CheckedAt, read.CheckedAt);
        Assert.Equal(
            made.Request.Athletes.Select(a => a.Menu.Length),
            read.Request.Athletes.Select(a => a.Menu.Length)
        );
        Assert.Equal(InGerman(made), InGerman(read));
    }

    /// <summary>That it is Tuesday, or Saturday, is no news: nothing is closed by the calendar alone.</summary>
    [Fact]
    public void OnEveryDayOfItsWeek_ItStands_AndThenItIsOver()
    {
        int cards;
        using (FrontDesk desk = Opened(DemoCommand.Day))
        {
            desk.Plan(null, CancellationToken.None);
            cards = desk.Book.PlanOrNull!.Cards.Count(c => !c.Items.IsEmpty);
            Assert.True(cards > 0);
        }

        for (int day = 0; day < 7; day++)
        {
            using FrontDesk later = Opened(DemoCommand.Day.PlusDays(day));
            Assert.False(later.PlanIsOld);
            Assert.DoesNotContain(later.Book.PlanOrNull!.Cards, c => c.IsClosedSince);
            Assert.Equal(cards, later.Book.PlanOrNull!.Cards.Count(c => !c.Items.IsEmpty));
        }

        using FrontDesk over = Opened(DemoCommand.Day.PlusWeeks(1));
        Assert.Null(over.Book.PlanOrNull);
    }

    /// <summary>What closed her session stays closed over night, also where the sign was written wrongly: she is planned anew first.</summary>
    [Fact]
    public void WhatAStopSignClosed_StaysClosed_UntilThereIsAnotherPlan()
    {
        string her;
        using (FrontDesk desk = Opened(DemoCommand.Day))
        {
            desk.Plan(null, CancellationToken.None);
            her = desk.Book.PlanOrNull!.Cards.First(c => !c.Items.IsEmpty && c.Date > DemoCommand.Day).AthleteId;
            desk.Write(Entry("s1", her, EntryKinds.Sign, new SignEntry("swelling", "knee", "left")));
            Assert.All(Hers(desk, her), c => Assert.True(c.Items.IsEmpty));
        }

        using (FrontDesk desk = Opened(DemoCommand.Day))
        {
            Assert.True(desk.PlanIsOld);
            Assert.All(Hers(desk, her), c => Assert.True(c.Items.IsEmpty));
            Assert.DoesNotContain(desk.Book.PlanOrNull!.Standing, s => s.Athletes.Any(a => a.AthleteId == her));
            Assert.Contains(desk.Book.PlanOrNull!.Cards, c => c.AthleteId != her && !c.Items.IsEmpty);
            desk.Write(Entry("s2", her, EntryKinds.SignTakenBack, new TakenBackEntry("s1", "R. Marsh")));
        }

        using FrontDesk lifted = Opened(DemoCommand.Day);
        Assert.All(Hers(lifted, her), c => Assert.True(c.Items.IsEmpty));
        lifted.Plan(null, CancellationToken.None);
        Assert.Contains(Hers(lifted, her), c => !c.Items.IsEmpty);
    }

    /// <summary>A line in a table while the program was closed closes Tuesday's session on Tuesday, and of nobody else.</summary>
    [Fact]
    public void WhatCameWhileItWasClosed_Closes()
    {
        SessionCard card;
        using (FrontDesk desk = Opened(DemoCommand.Day))
        {
            desk.Plan(null, CancellationToken.None);
            card = desk.Book.PlanOrNull!.Cards.First(c => !c.Items.IsEmpty && c.Date > DemoCommand.Day);
        }

        File.AppendAllText(
            Path.Combine(_folder, "symptoms.csv"),
            $"{card.AthleteId},2027-01-05,knee,left,,,pain,after,8,\n"
        );
        using FrontDesk later = Opened(card.Date);
        PlannedWeek week = later.Book.PlanOrNull!;
        Assert.True(later.PlanIsOld);
        Assert.True(
            week.Cards.Single(c => c.SessionId == card.SessionId && c.AthleteId == card.AthleteId).IsClosedSince
        );
        Assert.DoesNotContain(week.Cards, c => c.AthleteId != card.AthleteId && c.IsClosedSince);
    }

    [Fact]
    public void WhatCanNotBeRead_IsSaid_AndPlannedAnew()
    {
        using (var store = Store.Open(Path.Combine(_folder, OpenedSquad.StoreInFolder), TimeProvider.System).Require())
        {
            store.KeepPlan(DemoCommand.Day, 1, "{\"from\":\"2027-01-04\"}");
        }

        using FrontDesk desk = Opened(DemoCommand.Day);
        Assert.False(desk.Book.Week.TryGet(out _, out Refusal? refusal));
        Assert.Contains("plan anew", refusal.Sentence, StringComparison.Ordinal);
        desk.Plan(null, CancellationToken.None);
        Assert.NotNull(desk.Book.PlanOrNull);
    }

    private FrontDesk Opened(LocalDate day)
    {
        var desk = new FrontDesk(
            OpenedSquad.Kept(_folder, null, null, CancellationToken.None).Require(),
            day,
            1,
            new SolveBudget { DeterministicTime = 0.3 }
        );
        Assert.True(SpinWait.SpinUntil(() => desk.Planning is null, TimeSpan.FromMinutes(2)));
        return desk;
    }

    private static JournalEntry Entry<T>(string id, string athlete, string kind, T what) =>
        new(id, kind, athlete, null, SystemClock.Instance.GetCurrentInstant(), "office", ContractJson.Line(what));

    private static SessionCard[] Hers(FrontDesk desk, string her) =>
        [.. desk.Book.PlanOrNull!.Cards.Where(c => c.AthleteId == her && c.Date > DemoCommand.Day)];

    private static string[] InGerman(PlannedWeek week)
    {
        Speech.Use(new Speech("de", UnitSystem.Metric));
        try
        {
            return
            [
                .. week
                    .Plan.Sessions.SelectMany(s => s.Athletes)
                    .SelectMany(a => a.Items)
                    .SelectMany(i => i.Because.Concat(i.Dose.Because))
                    .Concat(week.Plan.Unmet.SelectMany(u => u.Because))
                    .Concat(week.Plan.Remarks)
                    .Concat(week.Cards.SelectMany(c => c.Items).Select(i => i.Why))
                    .Select(s => SpokenSentences.Of(s).Text),
            ];
        }
        finally
        {
            Speech.Use(Speech.Standard);
        }
    }
}
