using System.Text;
using System.Text.Json;
using Jumpwright.App.Desk;
using Jumpwright.App.Wording;
using Jumpwright.Plans;
using Jumpwright.Sessions;
using NodaTime;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>The week is planned anew while a session of it is under way or over: nothing that was done is lost, on any page.</summary>
public class BegunSessionTests
{
    private static readonly LocalDate Monday = new(2027, 1, 4);

    [Fact]
    public async Task PlannedAnew_TheWeekShowsWhatWasDone_AndSaysNowhereThatNothingWasPlanned()
    {
        await using OwnSquad squad = await OwnSquad.Open(plans: true, few: true);
        PlannedSession session = squad.Desk.Book.PlanOrNull!.Plan.Sessions.First(s => s.Slot.Date == Monday);
        AthleteSession her = session.Athletes.First(a => a.Items.Length > 1);
        string name = squad.Desk.Book.Find(her.AthleteId)!.Athlete.Name;
        string page = PageText.Of(await squad.Get("/week"));
        Assert.Matches(@"Every hard limit is kept \(checked \w+ \d+ \w+, \d\d:\d\d\)\.", page);
        Assert.DoesNotContain("Done:", page, StringComparison.Ordinal);

        await HandIn(squad, her, session.Slot.Id);
        string stale = PageText.Of(await squad.Get("/week"));
        int old = stale.IndexOf("Something was written since this was planned", StringComparison.Ordinal);
        int kept = stale.IndexOf("Every hard limit was kept when it was checked", StringComparison.Ordinal);
        Assert.True(old >= 0 && kept > old, "what is stale is said before what was kept");
        Assert.DoesNotContain("Every hard limit is kept", stale, StringComparison.Ordinal);
        Assert.Contains("A session of this plan has begun.", stale, StringComparison.Ordinal);
        Assert.Contains($"Done: {Name(squad, her.Items[0])} 1 × ", stale, StringComparison.Ordinal);

        squad.Desk.Plan(null, TestContext.Current.CancellationToken);
        PlannedWeek week = squad.Desk.Book.PlanOrNull!;
        string anew = PageText.Of(await squad.Get("/week"));
        Assert.Contains($"Done: {Name(squad, her.Items[0])} 1 × ", anew, StringComparison.Ordinal);
        Assert.Contains("Nothing more is planned in this session.", anew, StringComparison.Ordinal);
        Assert.DoesNotContain(
            week.Plan.Sessions.Single(s => s.Slot.Id == session.Slot.Id).Athletes,
            a => a.AthleteId == her.AthleteId && a.Items.Length > 0
        );
        // What she did is no change of the plan, and the others keep what they had.
        Assert.DoesNotContain(week.Changes!.Value, c => c.AthleteId == her.AthleteId && c.SessionId == session.Slot.Id);
        SessionCard card = week.Cards.Single(c => c.SessionId == session.Slot.Id && c.AthleteId == her.AthleteId);
        Assert.StartsWith(
            "What you did in this session is logged.",
            card.NothingPlanned!.ToString(),
            StringComparison.Ordinal
        );

        using JsonDocument floor = JsonDocument.Parse(await squad.Get($"/floor/sessions/{session.Slot.Id}"));
        JsonElement row = floor
            .RootElement.GetProperty("athletes")
            .EnumerateArray()
            .Single(a => a.GetProperty("id").GetString() == her.AthleteId);
        Assert.Equal(
            "What was logged stands. Nothing more is planned in this session.",
            row.GetProperty("nothing").GetString()
        );
        Assert.Equal(her.Items[0].Dose.ExerciseId, row.GetProperty("done")[0].GetProperty("exercise").GetString());
        Assert.Contains(name, anew, StringComparison.Ordinal);
    }

    /// <summary>
    /// What was done in the session counts for its tests as well, and most of all once the session was planned anew and has nothing of it in its plan:
    /// the day's contacts are used up.
    /// </summary>
    [Fact]
    public async Task TestsBesideABegunSession_FitIntoWhatWasDoneInIt()
    {
        await using OwnSquad squad = await OwnSquad.Open(plans: true);
        (PlannedSession session, AthleteSession hers) = Offered(squad)
            .First(o => o.Hers.Items.Length > 0 && o.Session.Slot.Date == Monday);
        int most = squad
            .Desk.Book.PlanOrNull!.Request.Athletes.Single(a => a.Athlete.Id == hers.AthleteId)
            .ContactsAtMostOn(Monday);
        await HandIn(squad, hers, session.Slot.Id, most);
        Assert.DoesNotContain(Offered(squad), o => o.Session.Slot.Date == Monday && o.Hers.AthleteId == hers.AthleteId);

        squad.Desk.Plan(null, TestContext.Current.CancellationToken);
        Assert.DoesNotContain(Offered(squad), o => o.Session.Slot.Date == Monday && o.Hers.AthleteId == hers.AthleteId);
    }

    private static IEnumerable<(PlannedSession Session, AthleteSession Hers)> Offered(OwnSquad squad)
    {
        Workbook book = squad.Desk.Book;
        PlannedWeek week = book.PlanOrNull!;
        return from session in week.Plan.Sessions
            from leaf in book.Leaves
            where App.Desk.FloorTests.Of(book, week, session, leaf.Athlete.Id).Any(t => t.Test.Contacts > 0)
            select (
                session,
                session.Athletes.FirstOrDefault(a => a.AthleteId == leaf.Athlete.Id)
                    ?? new AthleteSession(leaf.Athlete.Id, [])
            );
    }

    private static string Name(OwnSquad squad, PlannedItem item) =>
        SpokenExercises.Name(squad.Desk.Book.Catalogue, item.Dose.ExerciseId);

    private static async Task HandIn(OwnSquad squad, AthleteSession her, string session, int? contacts = null)
    {
        object entry = new
        {
            id = Guid.NewGuid(),
            kind = "set",
            athlete = her.AthleteId,
            session,
            made_at = "2027-01-04T17:10:00.000Z",
            who = "tablet",
            data = new
            {
                exercise = her.Items[0].Dose.ExerciseId,
                set = 1,
                reps = her.Items[0].Dose.Reps,
                contacts = contacts ?? her.Items[0].Dose.Contacts(1),
            },
        };
        using var body = new StringContent(
            JsonSerializer.Serialize(new { entries = new[] { entry } }),
            Encoding.UTF8,
            "application/json"
        );
        using HttpResponseMessage taken = await squad.Client.PostAsync(
            new Uri("/floor/log", UriKind.Relative),
            body,
            TestContext.Current.CancellationToken
        );
        taken.EnsureSuccessStatusCode();
    }
}
