using System.Net;
using System.Text;
using System.Text.Json;
using Jumpwright.App.Desk;
using Jumpwright.App.Wording;
using Jumpwright.Athletes;
using Jumpwright.Planning;
using Jumpwright.Plans;
using Jumpwright.Quantities;
using NodaTime;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>What was said on the floor and handed in changes the week after, by tissue, and the page says what and why.</summary>
public class NextWeekTests
{
    private static readonly LocalDate NextMonday = new(2027, 1, 11);

    [Theory]
    [InlineData(4, null, "during", "Logged pain of 4 of 10")]
    [InlineData(7, null, "during", "Logged pain of 7 of 10")]
    [InlineData(4, "knee", "next-morning", "knee pain 4 of 10")]
    public async Task Pain_HandedInFromTheFloor_NextWeekAsksLessOfTheTissue_AndSaysWhy(
        int score,
        string? site,
        string when,
        string because
    )
    {
        await using OwnSquad squad = await OwnSquad.Open(plans: true, few: true, weeks: 2);
        Plan before = squad.Desk.Book.PlanOrNull!.Plan;
        Tissue[] tissues = site is null ? Enum.GetValues<Tissue>() : [Tissue.Patellar];
        string her = squad.Desk.Book.Leaves.Select(l => l.Athlete.Id).MaxBy(id => Asked(squad, before, id, tissues))!;
        int asked = Asked(squad, before, her, tissues);
        Assert.True(asked > 0, "there is something to be asked less of");
        PlannedSession first = before.Sessions.First(s => Items(s, her).Any());
        string exercise = Items(first, her).First().Dose.ExerciseId;

        await HandIn(
            squad,
            Entry(
                "set",
                new
                {
                    exercise,
                    set = 1,
                    reps = 5,
                    contacts = 5,
                }
            ),
            Entry(
                "pain",
                new
                {
                    score,
                    when,
                    exercise = site is null ? exercise : null,
                    site,
                    side = site is null ? null : "left",
                }
            )
        );
        Assert.True(squad.Desk.PlanIsOld);
        squad.Desk.Plan(null, TestContext.Current.CancellationToken);

        PlannedWeek week = squad.Desk.Book.PlanOrNull!;
        int now = Asked(squad, week.Plan, her, tissues);
        Assert.True(now < asked, $"{asked} contacts × tier before, {now} after");
        string page = PageText.Of(await squad.Get("/week"));
        Assert.Contains("<h1>2 weeks from Monday 4 January 2027</h1>", page, StringComparison.Ordinal);
        string name = squad.Desk.Book.Find(her)!.Athlete.Name;
        PlanChange[] less =
        [
            .. week.Changes!.Value.Where(c =>
                c.AthleteId == her && c.SetsNow < c.SetsBefore && IsNextWeek(c.SessionId)
            ),
        ];
        Assert.NotEmpty(less);
        Assert.All(less, c => Assert.Contains(SpokenSentences.Text(c.Because), page, StringComparison.Ordinal));
        Assert.True(
            less.Any(c => c.Because.ToString().Contains(because, StringComparison.Ordinal)),
            string.Join('\n', less.Select(c => $"{name} {c.SessionId} {c.ExerciseId}: {c.Because}"))
        );
        return;

        object Entry(string kind, object data) =>
            new
            {
                id = Guid.NewGuid(),
                kind,
                athlete = her,
                session = first.Slot.Id,
                made_at = "2027-01-04T18:00:00.000Z",
                who = "tablet",
                data,
            };
    }

    private static async Task HandIn(OwnSquad squad, params object[] entries)
    {
        using var body = new StringContent(
            JsonSerializer.Serialize(new { entries }),
            Encoding.UTF8,
            "application/json"
        );
        using HttpResponseMessage taken = await squad.Client.PostAsync(
            new Uri("/floor/log", UriKind.Relative),
            body,
            TestContext.Current.CancellationToken
        );
        string says = await taken.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.Contains("\"refused\":[]", says, StringComparison.Ordinal);
    }

    private static bool IsNextWeek(string session) =>
        string.CompareOrdinal(session, NextMonday.ToString("uuuu-MM-dd", null)) >= 0;

    private static IEnumerable<PlannedItem> Items(PlannedSession session, string athlete) =>
        session.Athletes.Where(a => a.AthleteId == athlete).SelectMany(a => a.Items);

    /// <summary>Contacts times tier that next week asks of those tissues.</summary>
    private static int Asked(OwnSquad squad, Plan plan, string athlete, Tissue[] tissues) =>
        plan
            .Sessions.Where(s => s.Slot.Date >= NextMonday)
            .SelectMany(s => Items(s, athlete))
            .Sum(i =>
                i.Contacts
                * tissues.Sum(t => squad.Desk.Book.Catalogue.Find(i.Dose.ExerciseId)!.Demand.GetValueOrDefault(t))
            );
}
