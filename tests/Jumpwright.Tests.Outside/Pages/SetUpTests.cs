using System.Net;
using Jumpwright.App.Desk;
using Jumpwright.Storage.Folders;
using NodaTime;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>A squad begun with nothing but the pages: athletes, times, kit. What somebody wrote by hand stays as it is.</summary>
public sealed class SetUpTests
{
    [Fact]
    public async Task NewSquad_AthleteTimeAndKitTyped_StandInTheFolder_AndAWeekCanBeAsked()
    {
        await using OwnSquad squad = await OwnSquad.Begin();
        Assert.Contains("Nobody is in the squad yet", await squad.Get("/"));
        Assert.Contains("Set up athletes and training times", await squad.Get("/week"));

        string said = await Said(
            squad,
            "/set-up/athlete",
            ("name", "Mora \"M\", =1+1"),
            ("birth_date", "2001-05-06"),
            ("body_mass_kg", "63.5"),
            ("stature_m", "1.74"),
            ("level", "intermediate"),
            ("operated", "no")
        );
        Assert.Contains("is a01.", said);
        Assert.Contains("is a02.", await Said(squad, "/set-up/athlete", ("name", "Second"), ("operated", "no")));
        Assert.Contains(
            "Write the athlete's name",
            await Said(squad, "/set-up/athlete", ("name", " "), ("operated", "no"))
        );
        // An operation closes, so nobody is added of whom it wasn't asked, or who had one nobody knows where.
        Assert.Contains("ask them", await Said(squad, "/set-up/athlete", ("name", "Third")));
        Assert.Contains(
            "write the place",
            await Said(squad, "/set-up/athlete", ("name", "Third"), ("operated", "yes"))
        );
        Assert.Contains(
            "one of them is wrong",
            await Said(squad, "/set-up/athlete", ("name", "Third"), ("operated", "no"), ("operation_site", "knee"))
        );
        await Said(squad, "/set-up/window", ("day", "Tuesday"), ("start", "18:30"), ("minutes", "50"));
        Assert.Contains(
            "10 to 240",
            await Said(squad, "/set-up/window", ("day", "Tuesday"), ("start", "18:30"), ("minutes", "5"))
        );
        await Said(squad, "/set-up/kit", ("plyo-box", "2"), ("band", "1"));
        await Said(squad, "/set-up/kit", ("plyo-box", "3"), ("band", "1"));

        SquadFolder read = SquadFolder.Read(squad.Folder).Require();
        Assert.Equal(2, read.Athletes.Length);
        Assert.Equal("Mora \"M\", =1+1", read.Athletes[0].Name);
        Assert.Equal(63.5, read.Athletes[0].BodyMassKg);
        Assert.Equal(26, squad.Desk.Book.Find("a01")!.Athlete.AgeOn(new LocalDate(2027, 6, 1)));
        Assert.Equal(
            (IsoDayOfWeek.Tuesday, new LocalTime(18, 30), 50),
            Assert.Single(read.Squad.Windows) is var w ? (w.Day, w.Start, w.Minutes) : default
        );
        Assert.Equal([("plyo-box", 3), ("band", 1)], read.Squad.Kit.Select(k => (k.Id, k.Count)));
        Assert.Empty(read.Problems);

        // Nothing is known of them, so that nothing but what needs no test is planned; but a week is there, with its card.
        squad.Desk.Plan(null, CancellationToken.None);
        PlannedWeek week = squad.Desk.Book.PlanOrNull!;
        Assert.NotEmpty(week.Cards);
        Assert.Contains("application/pdf", (await Pdf(squad, week)).Content.Headers.ContentType!.ToString());
    }

    [Fact]
    public async Task SquadWrittenByHand_KeepsItsCommentsAndOrder()
    {
        await using OwnSquad squad = await OwnSquad.Open(few: true);
        string[] before = await File.ReadAllLinesAsync(squad.At("squad.yaml"), TestContext.Current.CancellationToken);
        await Said(squad, "/set-up/window", ("day", "Saturday"), ("start", "10:00"), ("minutes", "40"));
        await Said(squad, "/set-up/kit", ("band", "5"));
        string[] after = await File.ReadAllLinesAsync(squad.At("squad.yaml"), TestContext.Current.CancellationToken);
        Assert.Equal(before.Length + 1, after.Length);
        Assert.Equal(
            ["  - {day: saturday, start: \"10:00\", minutes: 40}", "  - {id: band, count: 5}"],
            after.Except(before).Order(StringComparer.Ordinal)
        );
        Assert.Contains(squad.Desk.Book.Material.Squad.Windows, w => w.Day == IsoDayOfWeek.Saturday);
    }

    private static Task<HttpResponseMessage> Pdf(OwnSquad squad, PlannedWeek week) =>
        squad.Client.GetAsync(
            new Uri(App.Pages.Paths.CardPdf(week.Cards[0].SessionId, week.Cards[0].AthleteId), UriKind.Relative),
            TestContext.Current.CancellationToken
        );

    private static async Task<string> Said(OwnSquad squad, string path, params (string, string)[] form)
    {
        using HttpResponseMessage answer = await squad.Post(path, form);
        return WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
    }
}
