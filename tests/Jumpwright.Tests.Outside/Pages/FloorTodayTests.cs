using Jumpwright.App.Desk.Journals;
using Jumpwright.Plans;
using Jumpwright.Storage.Stores;
using NodaTime;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>What tablets say of the day: the latest word counts, whoever said it, and the page of the session begins with it.</summary>
public sealed class FloorTodayTests
{
    private static readonly Instant Early = Instant.FromUtc(2027, 1, 4, 9, 0);

    /// <summary>In whatever order the words come in: all tablets and the program say the same once they have handed in.</summary>
    [Fact]
    public void LatestWordCounts_OfTwoAtOneTimeTheGreaterId_InWhateverOrderTheyCame()
    {
        JournalEntry[] said =
        [
            Entry("1", EntryKinds.Minutes, Early, new MinutesEntry(25)),
            Entry("3", EntryKinds.Minutes, Early + Duration.FromMinutes(1), new MinutesEntry(30)),
            Entry("2", EntryKinds.Minutes, Early + Duration.FromMinutes(1), new MinutesEntry(35)),
            Entry("4", EntryKinds.Kit, Early, new KitEntry("plyo-box", 1)),
            Entry("5", EntryKinds.Kit, Early + Duration.FromMinutes(1), new KitEntry("plyo-box", 2)),
            Entry("6", EntryKinds.Here, Early, new HereEntry(false), "a01"),
            Entry("7", EntryKinds.Here, Early, new HereEntry(false), "a02"),
            Entry("8", EntryKinds.Here, Early + Duration.FromMinutes(1), new HereEntry(true), "a02"),
            Entry("9", EntryKinds.Minutes, Early + Duration.FromMinutes(9), new MinutesEntry(5)) with
            {
                SessionId = "another",
            },
        ];
        var random = new Random(1);
        for (int i = 0; i < 50; i++)
        {
            random.Shuffle(said);
            FloorToday today = FloorToday.Of(said, "s");
            Assert.Equal(30, today.Minutes);
            Assert.Equal(2, Assert.Single(today.Kit).Value);
            Assert.Equal(["a01"], today.Away);
        }
    }

    [Fact]
    public async Task SessionPage_BeginsWithWhatTheFloorSaid()
    {
        await using SquadSite site = await SquadSite.Open();
        site.Plan();
        PlannedSession session = site.Desk.Book.PlanOrNull!.Plan.Sessions[0];
        string page = "/week/sessions/" + session.Slot.Id;
        string who = session.Athletes.First(a => !a.Items.IsEmpty).AthleteId;
        string before = (await site.Get(page)).Text;
        Assert.DoesNotContain("What tablets on the floor said", before);
        Assert.Contains($"value=\"{who}\" checked", before);

        Assert.Equal(System.Net.HttpStatusCode.OK, await site.PostJson("/floor/log", Handed(session.Slot.Id, who)));
        string after = (await site.Get(page)).Text;
        Assert.Contains("What tablets on the floor said", after);
        Assert.Contains($"max=\"{session.Slot.Minutes}\" value=\"20\"", after);
        Assert.DoesNotContain($"value=\"{who}\" checked", after);
        // Asked for with other minutes: what was asked stands there.
        string asked = (await site.Get(page + "?called=yes&minutes=25&here=" + who)).Text;
        Assert.Contains($"max=\"{session.Slot.Minutes}\" value=\"25\"", asked);
        Assert.Contains($"value=\"{who}\" checked", asked);
    }

    /// <summary>Nobody of the squad is missing without a word: the name stands there with the reason, and the roll was not called before it was.</summary>
    [Fact]
    public async Task WhoIsNotInTheSession_StandsInItsRollWithTheReason()
    {
        await using OwnSquad squad = await OwnSquad.Open(plans: true, few: true);
        Plan plan = squad.Desk.Book.PlanOrNull!.Plan;
        string page = "/week/sessions/" + plan.Sessions[0].Slot.Id;
        string[] names = [.. squad.Desk.Book.Leaves.Select(l => l.Athlete.Name)];
        string before = PageText.Of(await squad.Get(page));
        Assert.All(names, n => Assert.Contains(n, before));
        Assert.Contains("Not called yet: everybody planned is ticked.", before);

        string name = squad.Desk.Book.Find("a01")!.Athlete.Name;
        await squad.Post("/health/a01/sign", ("what", "swelling"), ("on", "2027-01-04"));
        squad.Desk.Plan(null, TestContext.Current.CancellationToken);
        string after = PageText.Of(await squad.Get(page));
        Assert.Contains($"{name}</strong>: a stop sign that no licensed person has lifted. <a", after);
        string floor = await squad.Get("/floor/sessions/" + plan.Sessions[0].Slot.Id);
        Assert.Contains(name, floor);
        Assert.Contains("only a licensed person does, in writing.", floor);
        Assert.All(names, n => Assert.Contains(n, floor));

        await squad.Post("/set-up/athlete", ("name", "Late Comer"), ("body_mass_kg", "70"), ("operated", "no"));
        Assert.Contains(
            "Late Comer</strong>: came into the squad after this plan was made",
            PageText.Of(await squad.Get(page))
        );
        Assert.Contains("Late Comer", await squad.Get("/floor/sessions/" + plan.Sessions[0].Slot.Id));
    }

    private static string Handed(string session, string who)
    {
        string One(string kind, string? athlete, string data) =>
            $$"""{"id":"{{Guid.NewGuid()}}","kind":"{{kind}}","athlete":{{(athlete is null ? "null" : $"\"{athlete}\"")}},"session":"{{session}}","made_at":"2027-01-04T10:00:00Z","who":"Left","data":{{data}}}""";
        return "{\"entries\":["
            + string.Join(
                ',',
                One("minutes", null, "{\"minutes\":20}"),
                One("kit", null, "{\"kit\":\"plyo-box\",\"count\":1}"),
                One("here", who, "{\"here\":false}")
            )
            + "]}";
    }

    private static JournalEntry Entry(string id, string kind, Instant at, object data, string? athlete = null) =>
        new(id, kind, athlete, "s", at, "Left", System.Text.Json.JsonSerializer.Serialize(data));
}
