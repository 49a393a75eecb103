using System.Net;
using System.Text.Json;
using Jumpwright.App.Desk.Journals;
using Jumpwright.Athletes;
using Jumpwright.Plans;
using Jumpwright.Quantities;
using Jumpwright.Sessions;
using Jumpwright.Storage.Stores;
using Jumpwright.Tests.Outside.Paper;
using NodaTime;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>What a coach asks of a plan: locked, moved, taken out, missed. It is shown first, and nothing counts until it is taken.</summary>
public sealed class AmendmentTests : IAsyncLifetime
{
    private OwnSquad _squad = null!;

    public async ValueTask InitializeAsync() => _squad = await OwnSquad.Open(plans: true, few: true);

    public async ValueTask DisposeAsync() => await _squad.DisposeAsync();

    private Plan Plan => _squad.Desk.Book.PlanOrNull!.Plan;

    /// <summary>An item of somebody who does two exercises or more in a session.</summary>
    private (string Session, string Athlete, PlannedItem Item) Some() =>
        (
            from session in Plan.Sessions
            from one in session.Athletes
            where one.Items.Length >= 3
            select (session.Slot.Id, one.AthleteId, one.Items[^1])
        ).First();

    [Fact]
    public async Task WhatIfSheMissesADay_IsShownBesideThePlan_AndCountsOnlyWhenTaken()
    {
        (string session, string athlete, _) = Some();
        Plan before = Plan;
        await Ask(("what", "misses"), ("session", session), ("athlete", athlete));

        Assert.Same(before, Plan);
        Assert.Empty(_squad.Desk.Journal);
        Plan then = _squad.Desk.Proposal!.Outcome.Require().Plan;
        Assert.Empty(ItemsOf(then, session, athlete));
        Assert.Empty(Judge.Check(then, _squad.Desk.Proposal.Outcome.Require().Request));
        string page = await _squad.Get("/week");
        Assert.Contains($"What if {_squad.Desk.Book.Find(athlete)!.Athlete.Name} misses", page);
        Assert.Contains("As asked.", page);

        // Left, and nothing has happened; asked again and taken, it has, and stays through a plan made anew.
        await _squad.Post("/week/leave");
        Assert.Null(_squad.Desk.Proposal);
        Assert.Same(before, Plan);
        await Ask(("what", "misses"), ("session", session), ("athlete", athlete));
        Assert.Equal(HttpStatusCode.SeeOther, (await _squad.Post("/week/take")).StatusCode);
        Assert.Empty(ItemsOf(Plan, session, athlete));
        Assert.Equal(athlete, Assert.Single(_squad.Desk.Journal).AthleteId);
        _squad.Desk.Plan(null, CancellationToken.None);
        Assert.Empty(ItemsOf(Plan, session, athlete));
    }

    [Fact]
    public async Task LockedItem_StaysThroughReplanning_UntilTheLockIsTakenOff()
    {
        (string session, string athlete, PlannedItem item) = Some();
        (string, string)[] form = [("session", session), ("athlete", athlete), ("exercise", item.Dose.ExerciseId)];
        await _squad.Post("/week/lock", [.. form, ("holds", "yes")]);
        Assert.False(_squad.Desk.PlanIsOld);
        Assert.Contains("Locked: take it off", await _squad.Get($"/cards/{session}/{athlete}/why"));
        Assert.Contains("(locked)", await _squad.Get("/week"));

        _squad.Desk.Plan(null, CancellationToken.None);
        PlannedItem again = ItemsOf(Plan, session, athlete).Single(i => i.Dose.ExerciseId == item.Dose.ExerciseId);
        Assert.Equal(item.Sets, again.Sets);
        Assert.Contains(Sentence.Of($"locked by the coach"), again.Because);

        await _squad.Post("/week/lock", [.. form, ("holds", "no")]);
        Assert.Empty(_squad.Desk.Amendments.Locks);
    }

    [Fact]
    public async Task ItemMoved_IsGoneFromItsSession_AndStandsInTheOther_OrSaysWhatItCollidesWith()
    {
        (string session, string athlete, PlannedItem item) = Some();
        string to = Plan.Sessions.Select(s => s.Slot.Id).First(s => s != session);
        await Ask(
            ("what", "move"),
            ("session", session),
            ("athlete", athlete),
            ("exercise", item.Dose.ExerciseId),
            ("to", to)
        );
        App.Desk.PlannedWeek then = _squad.Desk.Proposal!.Outcome.Require();
        if (then.Plan.Status is PlanStatus.Infeasible)
        {
            Assert.NotEmpty(then.Plan.Collisions);
            Assert.Contains(then.Plan.Collisions[0].Requirements[0].Text, PageText.Of(await _squad.Get("/week")));
            Assert.Equal(HttpStatusCode.Conflict, (await _squad.Post("/week/take")).StatusCode);
            return;
        }

        Assert.DoesNotContain(ItemsOf(then.Plan, session, athlete), i => i.Dose.ExerciseId == item.Dose.ExerciseId);
        Assert.Contains(
            ItemsOf(then.Plan, to, athlete),
            i => i.Dose.ExerciseId == item.Dose.ExerciseId && i.Sets == item.Sets
        );
    }

    [Fact]
    public async Task SessionMoved_IsCalledByItsNewDay_KeepsWhatItCan_AndNoTwoAreHeldAtOnce()
    {
        SessionSlot slot = Plan.Sessions[0].Slot;
        int before = Plan.Sessions[0].Athletes.Sum(a => a.Items.Length);
        await Ask(("what", "move-session"), ("session", slot.Id), ("date", "2027-01-05"), ("start", "09:00"));
        App.Desk.PlannedWeek then = _squad.Desk.Proposal!.Outcome.Require();
        PlannedSession moved = then.Plan.Sessions.Single(s => s.Slot.Id == "2027-01-05-am");
        Assert.Equal(new LocalDate(2027, 1, 5), moved.Slot.Date);
        Assert.DoesNotContain(then.Plan.Sessions, s => s.Slot.Id == slot.Id);
        Assert.Empty(Judge.Check(then.Plan, then.Request));
        Assert.InRange(moved.Athletes.Sum(a => a.Items.Length), before / 2, 2 * before);

        SessionSlot second = Plan.Sessions[1].Slot;
        await Ask(
            ("what", "move-session"),
            ("session", slot.Id),
            ("date", second.Date.ToString("uuuu-MM-dd", null)),
            ("start", second.Start.PlusMinutes(10).ToString("HH:mm", null))
        );
        Assert.False(_squad.Desk.Proposal!.Outcome.TryGet(out _, out Refusal? why));
        Assert.Contains("is held then", why!.Sentence);
    }

    [Fact]
    public async Task WhyNotThat_ClosedExercise_IsAnsweredByWhatClosesIt_AndAskedForAllTheSame_IsRefusedInTheSameWords()
    {
        (string session, string athlete, _) = Some();
        (string closed, Progression.CriterionVerdict verdict) = _squad
            .Desk.Book.Find(athlete)!
            .Ladder.Rungs.Where(r => r.State == Progression.RungState.Closed)
            .SelectMany(r => r.Reasons.Select(reason => (r.ExerciseId, reason.Verdict)))
            .First(r => r.Verdict is Progression.CriterionVerdict.NotMet or Progression.CriterionVerdict.NotTested);
        string page = await _squad.Get($"/cards/{session}/{athlete}/why?not={closed}");
        Assert.Contains(verdict == Progression.CriterionVerdict.NotMet ? "Not met:" : "Not tested:", page);
        // No search is started, and nobody is shown a proof where a word is the answer; the page does not offer it either.
        Assert.DoesNotContain("value=\"there\"", page);
        HttpResponseMessage answer = await _squad.Post(
            "/week/try",
            ("what", "there"),
            ("session", session),
            ("athlete", athlete),
            ("exercise", closed),
            ("sets", "2")
        );
        Assert.Equal(HttpStatusCode.Conflict, answer.StatusCode);
        Assert.Contains(
            "Not open to " + _squad.Desk.Book.Find(athlete)!.Athlete.Name,
            await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken)
        );
        Assert.Null(_squad.Desk.Proposal);
    }

    [Fact]
    public async Task Proposal_WorkedOutBeforeSomethingWasWritten_IsNotTaken()
    {
        (string session, string athlete, _) = Some();
        await Ask(("what", "misses"), ("session", session), ("athlete", athlete));
        _squad.Desk.Write(
            new JournalEntry(
                Guid.NewGuid().ToString(),
                EntryKinds.Pain,
                athlete,
                session,
                Instant.FromUtc(2027, 1, 4, 9, 0),
                "test",
                JsonSerializer.Serialize(new PainEntry(7, "rest", null, "knee", "left"))
            )
        );
        HttpResponseMessage answer = await _squad.Post("/week/take");
        Assert.Equal(HttpStatusCode.Conflict, answer.StatusCode);
        Assert.DoesNotContain(_squad.Desk.Journal, e => e.Kind == EntryKinds.TakenOut);
    }

    [Fact]
    public async Task RollCall_CutsForWhoIsHere_AndNeverAdds()
    {
        PlannedSession session = Plan.Sessions[0];
        string[] here = [.. session.Athletes.Where(a => !a.Items.IsEmpty).Select(a => a.AthleteId).Take(3)];
        string page = await _squad.Get(
            $"/week/sessions/{session.Slot.Id}?called=yes&minutes=30&{string.Join('&', here.Select(h => "here=" + h))}"
        );
        Assert.Contains("Stations now", page);
        string stations = page[page.IndexOf("Stations now", StringComparison.Ordinal)..];
        foreach (AthleteSession away in session.Athletes.Where(a => !here.Contains(a.AthleteId)))
        {
            Assert.DoesNotContain(_squad.Desk.Book.Find(away.AthleteId)!.Athlete.Name, stations);
        }
    }

    [Fact]
    public async Task TheMorningAfter_PainIsWritten_CountsForSafety_AndThePlanIsOld()
    {
        (string session, string athlete, PlannedItem item) = Some();
        _squad.Desk.Write(
            new JournalEntry(
                Guid.NewGuid().ToString(),
                EntryKinds.Set,
                athlete,
                session,
                Instant.FromUtc(2027, 1, 4, 17, 0),
                "tablet",
                JsonSerializer.Serialize(new SetEntry(item.Dose.ExerciseId, 1, 5, 10, 4, false, null))
            )
        );
        Assert.Equal(
            HttpStatusCode.SeeOther,
            (
                await _squad.Post(
                    "/done/after",
                    ("session", session),
                    ("athlete", athlete),
                    ("pain", "6"),
                    ("rpe", "7"),
                    ("minutes", "40")
                )
            ).StatusCode
        );
        CompletedItem done = Assert.Single(
            _squad.Desk.Book.Find(athlete)!.History.Completed,
            c => c.SessionId == session && c.ExerciseId == item.Dose.ExerciseId
        );
        Assert.Equal((6, 7, 40), (done.PainNextMorning, done.EffortRpe, done.SessionMinutes));
        Assert.True(_squad.Desk.PlanIsOld);
        LocalDate monday = PlanRequest.WeekOf(done.Date);
        Assert.Equal(280, Logs.Week(_squad.Desk.Book.Find(athlete)!.History, monday, monday).Load, 6);

        string page = PageText.Of(await _squad.Get("/done"));
        Assert.Contains("the morning after 6 of 10", page);
        Assert.Contains("sample, n − 1", page);
        Assert.Contains("10 of ", page);
        if (item.Dose.Stop.LandingFaults is { } most and <= 4)
        {
            Assert.Contains($"4 landing faults; {most} are the limit", page);
        }
    }

    [Fact]
    public async Task Override_WithWhoAndWhy_StandsOnTheWeekAndOnTheCoachsPrintedSheet()
    {
        await using OwnSquad squad = await OwnSquad.Open(
            plans: true,
            few: true,
            before: folder =>
                File.WriteAllText(
                    Path.Combine(folder, "overrides.csv"),
                    "limit,athlete,value,who,reason,from,until\nexercises-per-session-most,,4,R. Marsh,two new athletes in the group,2027-01-01,2027-01-20\n"
                )
        );
        string week = PageText.Of(await squad.Get("/week"));
        Assert.Contains("by R. Marsh", week);
        Assert.Contains("two new athletes in the group", week);
        string sheet = CardText
            .Read(
                await squad.Client.GetByteArrayAsync(
                    new Uri($"/sheets/{squad.Desk.Book.PlanOrNull!.Cards[0].SessionId}.pdf", UriKind.Relative),
                    TestContext.Current.CancellationToken
                )
            )
            .All;
        Assert.Contains("R. Marsh", sheet);
        Assert.Contains("two new athletes in the group", sheet);
        Assert.All(
            squad.Desk.Book.PlanOrNull!.Plan.Sessions.SelectMany(s => s.Athletes),
            a => Assert.InRange(a.Items.Length, 0, 4)
        );
    }

    private async Task Ask(params (string, string)[] form)
    {
        Assert.Equal(HttpStatusCode.SeeOther, (await _squad.Post("/week/try", form)).StatusCode);
        while (_squad.Desk.Planning is not null)
        {
            await Task.Delay(20, TestContext.Current.CancellationToken);
        }
    }

    private static IEnumerable<PlannedItem> ItemsOf(Plan plan, string session, string athlete) =>
        plan
            .Sessions.Where(s => s.Slot.Id == session)
            .SelectMany(s => s.Athletes)
            .Where(a => a.AthleteId == athlete)
            .SelectMany(a => a.Items);
}
