using System.Net;
using Jumpwright.App.Desk;
using Jumpwright.Athletes;
using Jumpwright.Plans;
using Jumpwright.Quantities;
using Jumpwright.Safety;
using Jumpwright.Sessions;
using Jumpwright.Trials;
using NodaTime;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>A stop sign, a clinician's word and a new body mass, written in a page: what they close, and what alone opens it again.</summary>
public sealed class HealthPageTests
{
    private static readonly LocalDate Today = new(2027, 1, 4);

    [Fact]
    public async Task StopSign_ClosesAtOnce_AndOnlyALicensedNamedDatedWordLiftsIt()
    {
        await using OwnSquad squad = await OwnSquad.Open(few: true);
        Assert.Empty(Closing(squad));
        await Write(squad, "sign", ("what", "giving-way"), ("on", "2027-01-03"), ("site", "Knie"), ("side", "left"));
        Assert.Contains("giving way (left knee)", Assert.Single(Closing(squad)).Because.ToString());

        // The athlete's own 0, a coach's word, a nameless one, and one for another place change nothing.
        await squad.Post("/athletes/a01/felt", ("score", "0"), ("when", "rest"));
        foreach (
            (string, string)[] form in new[]
            {
                Lift(role: "coach"),
                Lift(by: " "),
                Lift(from: "2027-01-05"),
                Lift(role: "healer"),
            }
        )
        {
            Assert.Equal(HttpStatusCode.OK, (await squad.Post("/health/a01/restriction", form)).StatusCode);
            Assert.Single(Closing(squad));
        }

        foreach (
            (string, string)[] form in new[] { Lift(site: "ankle"), Lift(from: "2027-01-02"), Lift(site: "right knee") }
        )
        {
            Assert.Contains("There is no stop sign that this lifts", await Refused(squad, "restriction", form));
            Assert.Single(Closing(squad));
        }

        await Write(squad, "restriction", Lift());
        Assert.Empty(Closing(squad));
        Assert.Contains("stop sign lifted", await squad.Get("/athletes/a01"));
    }

    /// <summary>
    /// After a stop sign the paper of before is named on every page that leads to it, and what is printed anew holds neither work nor a turn of
    /// them; also where the sign was written while the plan was being worked out.
    /// </summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task AfterAStopSign_ThePaperOfBeforeIsNamed_AndTheNewOneHoldsNothingOfThem(bool whilePlanning)
    {
        await using OwnSquad squad = await OwnSquad.Open(plans: true, few: true);
        Assert.DoesNotContain("data-paper", await squad.Get("/week"));
        PlannedSession session = squad.Desk.Book.PlanOrNull!.Plan.Sessions.First(s =>
            s.Athletes.Any(a => a.AthleteId == "a01" && !a.Items.IsEmpty)
        );
        if (whilePlanning)
        {
            var writing = new Writing(() =>
                squad.Post("/health/a01/sign", ("what", "swelling"), ("on", "2027-01-04")).GetAwaiter().GetResult()
            );
            squad.Desk.Plan(writing, TestContext.Current.CancellationToken);
            Assert.True(writing.Done);
        }
        else
        {
            await Write(squad, "sign", ("what", "swelling"), ("on", "2027-01-04"));
        }

        string name = squad.Desk.Book.Find("a01")!.Athlete.Name;
        string page = "/week/sessions/" + session.Slot.Id;
        foreach (string where in new[] { "/", "/week", page, "/health/a01" })
        {
            Assert.Contains("Paper printed before this no longer holds.", await squad.Get(where));
        }

        Assert.DoesNotContain("data-paper", await squad.Get("/health/a02"));
        PlannedWeek week = squad.Desk.Book.PlanOrNull!;
        CoachSheet sheet = week.Sheets.First(s => s.SessionId == session.Slot.Id);
        Assert.DoesNotContain(sheet.Stations, s => s.AthleteNames.Contains(name));
        Assert.Contains(
            "Closed since this was planned: a stop sign",
            sheet.Lines.First(l => l.AthleteName == name).Watch!.ToString()
        );
        Assert.DoesNotContain($"value=\"a01\"", await squad.Get(page));
        Assert.Contains(session.Athletes, a => a.AthleteId == "a01");
        Assert.Contains(week.Plan.Sessions.SelectMany(s => s.Athletes), a => a.AthleteId == "a01" && !a.Items.IsEmpty);
    }

    private sealed class Writing(Action write) : IProgress<Sentence>
    {
        public bool Done { get; private set; }

        public void Report(Sentence value)
        {
            if (!Done)
            {
                Done = true;
                write();
            }
        }
    }

    /// <summary>A slip of the finger is taken back by name and on its own day; the page still shows both, and of two signs the other stands.</summary>
    [Fact]
    public async Task AStopSignWrittenWrongly_IsTakenBackByName_AndOnlyThatOne()
    {
        await using OwnSquad squad = await OwnSquad.Open(few: true);
        await Write(squad, "sign", ("what", "locking"), ("on", "2027-01-04"), ("site", "knee"), ("side", "left"));
        await Write(squad, "sign", ("what", "swelling"), ("on", "2027-01-04"), ("site", "ankle"));
        Assert.Equal(2, Closing(squad).Length);
        string page = await squad.Get("/health/a01");
        Assert.Contains("Stop signs that stand now.", page);
        string locking = Entries(squad).Single(e => e.Json.Contains("locking", StringComparison.Ordinal)).Id;

        Assert.Contains(
            "by name",
            await Refused(squad, "take-back", [("entry", locking), ("by", " ")]),
            StringComparison.OrdinalIgnoreCase
        );
        Assert.Equal(2, Closing(squad).Length);
        await Write(squad, "take-back", ("entry", locking), ("by", "Runa Teal"));
        Assert.Contains("swelling", Assert.Single(Closing(squad)).Because.ToString());
        Assert.Contains("Taken back by Runa Teal: it does not count.", await squad.Get("/health/a01"));
        Assert.Equal(3, Entries(squad).Length);

        static Jumpwright.Storage.Stores.JournalEntry[] Entries(OwnSquad squad) =>
            [
                .. squad.Desk.Journal.Where(e =>
                    e.Kind.StartsWith("sign", StringComparison.Ordinal) && e.AthleteId == "a01"
                ),
            ];
    }

    [Fact]
    public async Task StopSign_SurvivesTheProgram_AndIsGoneWithTheAthlete()
    {
        await using OwnSquad squad = await OwnSquad.Open(few: true);
        await Write(squad, "sign", ("what", "swelling"), ("on", "2027-01-04"));
        using (
            App.Desk.OpenedSquad again = App
                .Desk.OpenedSquad.Kept(squad.Folder, null, null, CancellationToken.None)
                .Require()
        )
        {
            History a01 = again.Material.Histories.Single(h => h.Athlete.Id == "a01");
            Assert.Contains(SafetyRules.For(a01, Today), r => r.Effect is NothingPlanned);
        }

        await squad.Post("/settings/erase", ("athlete", "a01"), ("again", "a01"));
        Assert.DoesNotContain(squad.Desk.Journal, e => e.AthleteId == "a01");
    }

    [Theory]
    [InlineData("chest-pain")]
    [InlineData("faint")]
    [InlineData("giving-way")]
    [InlineData("head-knock")]
    [InlineData("locking")]
    [InlineData("numbness")]
    [InlineData("pop")]
    [InlineData("swelling")]
    public async Task EveryStopSignOfTheForm_IsOneForSafety(string what)
    {
        await using OwnSquad squad = await OwnSquad.Open(few: true);
        await Write(squad, "sign", ("what", what), ("on", "2027-01-04"));
        Assert.Single(Closing(squad));
    }

    [Fact]
    public async Task Restriction_ClosesWhatItForbids_UntilItsLastDay_AndIsReadBackInWords()
    {
        await using OwnSquad squad = await OwnSquad.Open(few: true);
        await Write(
            squad,
            "restriction",
            ("set_by", "Dr Marsh"),
            ("role", "physiotherapist"),
            ("from", "2027-01-01"),
            ("until", "2027-01-31"),
            ("site", "knee"),
            ("side", "left"),
            ("forbidden", "depth-jump"),
            ("contacts", "40"),
            ("drop", "20"),
            ("note", "six weeks")
        );
        Ruling[] rulings = [.. Rulings(squad)];
        Assert.Contains(rulings, r => r.Effect is NoDepthJumps);
        Assert.Contains(rulings, r => r.Effect is ContactsPerSessionAtMost { Contacts: 40 });
        Assert.Contains(rulings, r => r.Effect is DropAtMost { HeightM: 0.2 });
        string page = PageText.Of(await squad.Get("/athletes/a01"));
        Assert.Contains(
            "until 31 Jan 2027; forbidden: depth jumps; at most 40 contacts a session; no drop above 20 cm; ",
            page
        );

        // Written wrongly: only by name, and both words stay to be read.
        string entry = squad.Desk.Journal.Single(e => e.Kind == "restriction").Id;
        await squad.Post("/health/a01/take-back", ("entry", entry), ("by", ""));
        Assert.Contains(Rulings(squad), r => r.Effect is NoDepthJumps);
        await squad.Post("/health/a02/take-back", ("entry", entry), ("by", "Kim"));
        Assert.Contains(Rulings(squad), r => r.Effect is NoDepthJumps);
        await Write(squad, "take-back", ("entry", entry), ("by", "Kim"));
        Assert.DoesNotContain(Rulings(squad), r => r.Effect is NoDepthJumps);
        Assert.Contains("Taken back by Kim", await squad.Get("/health/a01"));
    }

    [Theory]
    [InlineData("set_by", "", "set-by")]
    [InlineData("role", "", "role")]
    [InlineData("from", "soon", "from")]
    [InlineData("until", "2026-12-31", "until")]
    [InlineData("contacts", "-3", "contacts")]
    [InlineData("drop", "2 boxes", "drop")]
    [InlineData("until", "2027-02-31", "until")]
    [InlineData("until", "2027-01-31", "until")]
    [InlineData("endless", "", "until")]
    [InlineData("site", "", "site")]
    [InlineData("whole", "yes", "site")]
    [InlineData("forbidden", "", "forbidden-all")]
    [InlineData("forbidden", "hops", "forbidden-all")]
    [InlineData("allowed", "hops until it hurts", "forbidden-all")]
    public async Task RestrictionThatIsRefused_StandsThereAgainAsTyped(string cell, string typed, string field)
    {
        await using OwnSquad squad = await OwnSquad.Open(few: true);
        var form = new Dictionary<string, string>(StringComparer.Ordinal)
        {
            ["set_by"] = "Dr Marsh",
            ["role"] = "surgeon",
            ["from"] = "2027-01-01",
            ["site"] = "knee",
            ["endless"] = "yes",
            ["forbidden"] = "jumps",
            ["note"] = "six weeks",
        };
        form[cell] = typed;
        using HttpResponseMessage answer = await squad.Post(
            "/health/a01/restriction",
            [.. form.Select(f => (f.Key, f.Value))]
        );
        string page = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.Contains($"<a href=\"#{field}\">", page);
        Assert.Contains("class=\"wrong\"", page);
        Assert.Contains("value=\"six weeks\"", page);
        Assert.Contains(cell == "role" ? "value=\"Dr Marsh\"" : "<option value=\"surgeon\" selected", page);
        Assert.DoesNotContain(squad.Desk.Journal, e => e.Kind == "restriction");
    }

    /// <summary>A person who sends a form reads a page, with a way back; a script reads JSON.</summary>
    [Theory]
    [InlineData("text/html", "<h1>Not done</h1>")]
    [InlineData("application/json", "{\"refused\":")]
    public async Task WhatWasNotDone_IsAPageToAPerson_AndJsonToAScript(string reads, string begins)
    {
        await using OwnSquad squad = await OwnSquad.Open(few: true);
        using var request = new HttpRequestMessage(HttpMethod.Post, "/athletes/a01/felt")
        {
            Content = new FormUrlEncodedContent([KeyValuePair.Create("score", "12")]),
        };
        request.Headers.Accept.ParseAdd(reads);
        request.Headers.Referrer = new Uri(squad.Address + "/athletes/a01");
        using HttpResponseMessage answer = await squad.Client.SendAsync(request, TestContext.Current.CancellationToken);
        string said = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.Conflict, answer.StatusCode);
        Assert.Contains(begins, said, StringComparison.Ordinal);
        Assert.Contains("Say how bad it is", said, StringComparison.Ordinal);
        Assert.Equal(reads == "text/html", said.Contains("href=\"/athletes/a01\"", StringComparison.Ordinal));
        Assert.Empty(squad.Desk.Journal);
    }

    /// <summary>Whatever was left empty is asked for; no place, no end and no day are filled in for whoever wrote nothing.</summary>
    [Fact]
    public async Task EmptyForm_WritesNothing()
    {
        await using OwnSquad squad = await OwnSquad.Open(few: true);
        foreach (string form in new[] { "sign", "restriction", "take-back", "end", "body" })
        {
            await Refused(squad, form);
        }

        (string, string)[] named = [("set_by", "Dr Marsh"), ("role", "physician"), ("from", "2027-01-04")];
        await Refused(squad, "restriction", named);
        await Refused(squad, "restriction", [.. named, ("allowed", "all")]);
        await Refused(squad, "restriction", [.. named, ("allowed", "all"), ("endless", "yes")]);
        await Refused(squad, "restriction", [.. named, ("allowed", "all"), ("whole", "yes")]);
        await Refused(squad, "restriction", [.. named, ("whole", "yes"), ("endless", "yes")]);
        await Refused(squad, "sign", ("on", "2027-01-03"), ("site", "knee"));
        Assert.Equal(
            HttpStatusCode.Conflict,
            (await squad.Post("/athletes/a01/felt", ("score", "2"), ("site", "knee"), ("when", ""))).StatusCode
        );
        Assert.Empty(squad.Desk.Journal);

        // A 0 of no place says that somebody asked; one of a place says when, since it may answer a pain there.
        Assert.Equal(
            HttpStatusCode.Conflict,
            (await squad.Post("/athletes/a01/felt", ("score", "0"), ("site", "knee"), ("when", ""))).StatusCode
        );
        await squad.Post("/athletes/a01/felt", ("score", "0"), ("site", ""), ("when", ""));
        SymptomReport asked = squad.Desk.Book.Find("a01")!.History.Symptoms[^1];
        Assert.Equal((0d, "rest"), (asked.Score, asked.When));
    }

    [Theory]
    [InlineData("forbidden:all allowed:all")]
    [InlineData("forbidden:all allowed:snap-down")]
    [InlineData("allowed:all allowed:snap-down")]
    public async Task WhatContradictsItself_IsRefused(string ticks)
    {
        await using OwnSquad squad = await OwnSquad.Open(few: true);
        string page = await Refused(
            squad,
            "restriction",
            [
                ("set_by", "Dr Marsh"),
                ("role", "physician"),
                ("from", "2027-01-04"),
                ("whole", "yes"),
                ("endless", "yes"),
                .. ticks.Split(' ').Select(t => t.Split(':')).Select(t => (t[0], t[1])),
            ]
        );
        Assert.Contains("contradicts itself", page);
    }

    [Theory]
    [InlineData("2027-01-05", "", "")]
    [InlineData("", "", "")]
    [InlineData("soon", "", "")]
    [InlineData("2027-01-04", "", "left")]
    public async Task StopSign_OfADayOrAPlaceThatNobodyChose_IsRefused(string on, string site, string side)
    {
        await using OwnSquad squad = await OwnSquad.Open(few: true);
        await Refused(squad, "sign", ("what", "swelling"), ("on", on), ("site", site), ("side", side));
    }

    /// <summary>A word that ends something has no last day, and ends what is there.</summary>
    [Fact]
    public async Task WordThatEndsNothing_IsRefused()
    {
        await using OwnSquad squad = await OwnSquad.Open(few: true);
        Assert.Contains("There is no stop sign that this lifts", await Refused(squad, "restriction", Lift()));
        Assert.Contains(
            "There is no operation that this ends",
            await Refused(squad, "restriction", [.. Lift().SkipLast(1), ("allowed", "operation-discharged")])
        );
        await Write(squad, "sign", ("what", "locking"), ("on", "2027-01-04"));
        Assert.Contains(
            "What is ended has no last day",
            await Refused(squad, "restriction", [.. Lift(), ("until", "2027-02-01")])
        );
        Assert.Single(Closing(squad));
    }

    /// <summary>
    /// A restriction without an end is not there for ever: a licensed person gives it a last day, after which nothing is planned until such a
    /// person writes anew. Nobody else does, and no last day is put off.
    /// </summary>
    [Fact]
    public async Task LastDayGivenLater_OnlyCloses_UntilALicensedWordIsWrittenAnew()
    {
        await using OwnSquad squad = await OwnSquad.Open(few: true);
        (string, string)[] word =
        [
            ("set_by", "Dr Marsh"),
            ("role", "physician"),
            ("from", "2027-01-01"),
            ("whole", "yes"),
            ("endless", "yes"),
        ];
        await Write(squad, "restriction", [.. word, ("forbidden", "depth-jump")]);
        string entry = squad.Desk.Journal.Single(e => e.Kind == "restriction").Id;
        (string, string)[] End(string until, string role = "physician", string by = "Dr Marsh") =>
            [("entry", entry), ("until", until), ("by", by), ("role", role)];

        await Refused(squad, "end", End("2027-01-03", role: "coach"));
        await Refused(squad, "end", End("2027-01-03", by: ""));
        await Refused(squad, "end", End("2026-12-31"));
        await Refused(squad, "end", End(""));
        await Refused(squad, "end", ("entry", "none"), ("until", "2027-01-03"), ("by", "x"), ("role", "physician"));
        Assert.Empty(Closing(squad));

        await Write(squad, "end", End("2027-01-03"));
        Assert.Contains("has expired: ask Dr Marsh", Assert.Single(Closing(squad)).Because.ToString());
        await Refused(squad, "end", End("2027-02-01"));
        await Write(squad, "restriction", [.. word[..2], ("from", "2027-01-04"), .. word[3..], ("allowed", "all")]);
        Assert.Empty(Closing(squad));
        Assert.DoesNotContain(Rulings(squad), r => r.LimitId == "restriction");
    }

    /// <summary>Lifted in the morning, hurt again in the afternoon: whoever lifted the one had not heard of the other.</summary>
    [Fact]
    public async Task StopSignWrittenAfterTheWordThatLifts_StandsOnThatDayToo()
    {
        await using OwnSquad squad = await OwnSquad.Open(few: true);
        await Write(squad, "sign", ("what", "giving-way"), ("on", "2027-01-04"), ("site", "knee"));
        await Write(squad, "restriction", Lift());
        Assert.Empty(Closing(squad));
        await Write(squad, "sign", ("what", "swelling"), ("on", "2027-01-04"), ("site", "knee"));
        Assert.Contains("swelling (knee)", Assert.Single(Closing(squad)).Because.ToString());
        await Write(squad, "restriction", Lift());
        Assert.Empty(Closing(squad));
    }

    [Fact]
    public async Task BodyMass_Counts_UntilTheTableSaysAnotherOne()
    {
        await using OwnSquad squad = await OwnSquad.Open(few: true);
        double before = squad.Desk.Book.Find("a01")!.Athlete.BodyMassKg!.Value;
        Assert.Equal(HttpStatusCode.OK, (await squad.Post("/health/a01/body", ("mass", "8.5"))).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await squad.Post("/health/a01/body", ("mass", ""))).StatusCode);
        Assert.Equal(before, squad.Desk.Book.Find("a01")!.Athlete.BodyMassKg);
        await Write(squad, "body", ("mass", "101,5"));
        Assert.Equal(101.5, squad.Desk.Book.Find("a01")!.Athlete.BodyMassKg);
        Assert.Contains(Rulings(squad), r => r.LimitId == "heavy-athlete-drop");
        await Write(squad, "body", ("stature", "1.80"));
        Assert.Equal((101.5, 1.8), (Of(squad).BodyMassKg, Of(squad).StatureM));

        string table = squad.At("athletes.csv");
        await File.WriteAllTextAsync(
            table,
            (await File.ReadAllTextAsync(table, TestContext.Current.CancellationToken)).Replace(
                FormattableString.Invariant($",{before},"),
                ",77,",
                StringComparison.Ordinal
            ),
            TestContext.Current.CancellationToken
        );
        squad.Desk.Change(s => s.ImportAgain(null, CancellationToken.None)).Require();
        Assert.Equal(77, Of(squad).BodyMassKg);
    }

    private static Athlete Of(OwnSquad squad) => squad.Desk.Book.Find("a01")!.Athlete;

    private static IEnumerable<Ruling> Rulings(OwnSquad squad) =>
        SafetyRules.For(squad.Desk.Book.Find("a01")!.History, Today);

    private static Ruling[] Closing(OwnSquad squad) => [.. Rulings(squad).Where(r => r.Effect is NothingPlanned)];

    private static (string, string)[] Lift(
        string by = "Dr Marsh",
        string role = "physician",
        string from = "2027-01-04",
        string site = ""
    ) =>
        [
            ("set_by", by),
            ("role", role),
            ("from", from),
            site.Length > 0 ? ("site", site) : ("whole", "yes"),
            ("allowed", "stop-sign-lifted"),
        ];

    /// <summary>Sends a form that is refused, so that nothing new stands in the journal; its page.</summary>
    private static async Task<string> Refused(OwnSquad squad, string form, params (string, string)[] fields)
    {
        int before = squad.Desk.Journal.Length;
        using HttpResponseMessage answer = await squad.Post($"/health/a01/{form}", fields);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Equal(before, squad.Desk.Journal.Length);
        string page = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.Contains("Nothing was written.", PageText.Of(page));
        return page;
    }

    private static async Task Write(OwnSquad squad, string form, params (string, string)[] fields)
    {
        using HttpResponseMessage answer = await squad.Post($"/health/a01/{form}", fields);
        Assert.Equal(HttpStatusCode.SeeOther, answer.StatusCode);
    }
}
