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

    /// <summary>Why no week could be planned is not said any more once something changed: it need not hold.</summary>
    [Fact]
    public async Task WeekThatCouldNotBePlanned_SaysNothingOldOnceATimeIsThere()
    {
        await using OwnSquad squad = await OwnSquad.Begin();
        await Said(squad, "/set-up/athlete", ("name", "Jo"), ("operated", "no"));
        squad.Desk.Plan(null, CancellationToken.None);
        Assert.Contains("no training windows", await squad.Get("/week"));
        await Said(squad, "/set-up/window", ("day", "Tuesday"), ("start", "18:30"), ("minutes", "50"));
        string week = await squad.Get("/week");
        Assert.DoesNotContain("no training windows", week);
        Assert.Contains("Nothing is planned yet.", week);
    }

    [Theory]
    [InlineData("body_mass_kg", "8.25", "mass", "15 to 300")]
    [InlineData("body_mass_kg", "a lot", "mass", "15 to 300")]
    [InlineData("stature_m", "187", "stature", "0.8 to 2.6")]
    [InlineData("birth_date", "12.4.1999", "born", "birthday as a day")]
    [InlineData("operated", "", "ever", "ask them")]
    [InlineData("name", "", "name", "Write the athlete's name")]
    public async Task AthleteThatIsRefused_StandsThereAgainAsTyped_WithWhatIsWrongBesideItsField(
        string cell,
        string typed,
        string field,
        string why
    )
    {
        await using OwnSquad squad = await OwnSquad.Begin();
        var form = new Dictionary<string, string>(StringComparer.Ordinal)
        {
            ["name"] = "Mora \"M\"",
            ["birth_date"] = "1999-04-12",
            ["body_mass_kg"] = "82.5",
            ["stature_m"] = "1.87",
            ["sport"] = "basketball",
            ["level"] = "advanced",
            ["operated"] = "yes",
            ["operation_site"] = "knee",
            ["operation_side"] = "left",
            ["operation_date"] = "2024-02-01",
        };
        form[cell] = typed;
        string said = await Said(squad, "/set-up/athlete", [.. form.Select(f => (f.Key, f.Value))]);

        Assert.Contains(why, Element(said, "p", "role=\"alert\""));
        Assert.Contains($"href=\"#{field}\"", said);
        string beside = said[said.IndexOf($"id=\"{field}\"", StringComparison.Ordinal)..];
        Assert.Contains(why, beside[..beside.IndexOf("</p>", StringComparison.Ordinal)]);
        Assert.Single(Matches(said, "aria-invalid=\"true\""));
        foreach ((string name, string value) in form.Where(f => f.Value.Length > 0))
        {
            Assert.Matches(
                name is "level" or "operated" or "operation_side"
                    ? $"<option value=\"{value}\" selected"
                    : $"name=\"{name}\"[^>]* value=\"{System.Text.RegularExpressions.Regex.Escape(value)}\"",
                said
            );
        }

        Assert.Empty(SquadFolder.Read(squad.Folder).Require().Athletes);
    }

    /// <summary>Two of one name would be mistaken for each other on card and floor.</summary>
    [Fact]
    public async Task SecondAthleteOfOneName_NeedsAMark_AndWhoIsThereIsSaid()
    {
        await using OwnSquad squad = await OwnSquad.Begin();
        await Said(squad, "/set-up/athlete", ("name", "Mia Stone"), ("birth_date", "2001-05-06"), ("operated", "no"));
        string said = await Said(squad, "/set-up/athlete", ("name", "mia  stone"), ("operated", "no"));
        Assert.Contains("is in the squad already: a01, born 6 May 2001.", Element(said, "p", "role=\"alert\""));
        Assert.Contains("aria-invalid=\"true\"", said);
        Assert.Single(SquadFolder.Read(squad.Folder).Require().Athletes);

        Assert.Contains(
            "is a02.",
            await Said(squad, "/set-up/athlete", ("name", "Mia Stone 2003"), ("operated", "no"))
        );
        Assert.Equal(2, SquadFolder.Read(squad.Folder).Require().Athletes.Length);
    }

    [Fact]
    public async Task MassWithADecimalComma_AndAPlaceInGerman_StandInTheFolderAsItsFilesNameThem()
    {
        await using OwnSquad squad = await OwnSquad.Begin();
        Assert.Contains(
            "is a01.",
            await Said(
                squad,
                "/set-up/athlete",
                ("name", "Jo"),
                ("body_mass_kg", "82,5"),
                ("stature_m", "1,87"),
                ("operated", "yes"),
                ("operation_site", "Knie")
            )
        );
        SquadFolder read = SquadFolder.Read(squad.Folder).Require();
        Assert.Equal((82.5, 1.87), (read.Athletes[0].BodyMassKg, read.Athletes[0].StatureM));
        Assert.Equal("knee", read.Athletes[0].Operation!.Site);
        Assert.Empty(read.Problems);
    }

    [Fact]
    public async Task TimeThatIsRefused_StandsThereAgainAsTyped()
    {
        await using OwnSquad squad = await OwnSquad.Begin();
        string said = await Said(squad, "/set-up/window", ("day", "Friday"), ("start", "18:30"), ("minutes", "5"));
        Assert.Contains("10 to 240", Element(said, "p", "role=\"alert\""));
        Assert.Contains("<option value=\"Friday\" selected", said);
        Assert.Matches("name=\"start\"[^>]* value=\"18:30\"", said);
        Assert.Matches("name=\"minutes\"[^>]* value=\"5\" aria-invalid=\"true\"", said);
    }

    private static string Element(string page, string tag, string holding)
    {
        int from = page.IndexOf(holding, StringComparison.Ordinal);
        Assert.True(from >= 0, $"no {tag} with {holding}");
        return page[from..page.IndexOf($"</{tag}>", from, StringComparison.Ordinal)];
    }

    private static IEnumerable<string> Matches(string page, string pattern) =>
        System.Text.RegularExpressions.Regex.Matches(page, pattern).Select(m => m.Value);

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
        return PageText.Of(await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
    }
}
