using System.Net;
using Jumpwright.Athletes;
using Jumpwright.Storage.Folders;
using NodaTime;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>Tests done with a tape, a watch or an eye are typed in a page, stand in screens.csv, and count like any row there.</summary>
public sealed class TypedTestsTests
{
    private const string Page = "/tests/a02";

    [Fact]
    public async Task EveryTestThatTheTableReads_HasAField()
    {
        await using OwnSquad squad = await OwnSquad.Open(few: true);
        string page = await squad.Get(Page);
        string[] named =
        [
            .. System.Text.RegularExpressions.Regex.Matches(page, " name=\"([^\"]+)\"").Select(m => m.Groups[1].Value),
        ];
        foreach (FieldTest test in FieldTest.All)
        {
            string[] fields =
                test.Sided ? [test.Id + "-left", test.Id + "-right"]
                : test.Id.StartsWith("squat-", StringComparison.Ordinal)
                || test.Id.StartsWith("hex-bar-", StringComparison.Ordinal)
                    ? [test.Id + "-1", test.Id + "-3"]
                : [test.Id];
            Assert.All(fields, f => Assert.Contains(f, named));
        }
    }

    [Fact]
    public async Task TestsTyped_StandInTheTable_AndOnTheAthletesPage_InTheReadersUnits()
    {
        await using OwnSquad squad = await OwnSquad.Open(few: true);
        int before = squad.Desk.Book.Find("a02")!.History.Screens.Length;
        using HttpResponseMessage answer = await squad.Post(
            Page,
            ("date", "2027-01-03"),
            ("assessor", "Kim, coach"),
            ("single-hop-left", "142,5"),
            ("single-hop-right", "151"),
            ("heel-raises-left", "27"),
            ("tuck-jump", "3"),
            ("knee-effusion-right", "trace"),
            ("knee-extension-deficit-left", "-5"),
            ("squat-load-1", "80"),
            ("squat-reps-1", "5"),
            ("hex-bar-load-1", "60"),
            ("hex-bar-reps-1", "3"),
            ("hex-bar-velocity-1", "0.95"),
            ("hex-bar-load-2", "100"),
            ("hex-bar-reps-2", "3"),
            ("hex-bar-velocity-2", "0.62"),
            ("run-up-side", "left"),
            ("run-up-speed", "5.6"),
            ("run-up-contact", "0.19"),
            ("flight-frames", "130"),
            ("flight-rate", "240"),
            ("sitting-height", "92")
        );
        Assert.Equal(HttpStatusCode.SeeOther, answer.StatusCode);
        Assert.Equal("/athletes/a02#screens", answer.Headers.Location!.ToString());

        ScreenResult[] typed = [.. squad.Desk.Book.Find("a02")!.History.Screens.Where(s => s.Assessor == "Kim, coach")];
        Assert.Equal(
            [
                ("flight-frames", Side.Unknown, 130, "frames@240", 1),
                ("heel-raises", Side.Left, 27, "reps", 1),
                ("hex-bar-load", Side.Unknown, 60, "kg", 1),
                ("hex-bar-load", Side.Unknown, 100, "kg", 2),
                ("hex-bar-reps", Side.Unknown, 3, "reps", 1),
                ("hex-bar-reps", Side.Unknown, 3, "reps", 2),
                ("hex-bar-velocity", Side.Unknown, 0.95, "m/s", 1),
                ("hex-bar-velocity", Side.Unknown, 0.62, "m/s", 2),
                ("knee-effusion", Side.Right, 0.5, "grade", 1),
                ("knee-extension-deficit", Side.Left, -5, "deg", 1),
                ("run-up-contact", Side.Left, 0.19, "s", 1),
                ("run-up-speed", Side.Left, 5.6, "m/s", 1),
                ("single-hop", Side.Left, 1.425, "m", 1),
                ("single-hop", Side.Right, 1.51, "m", 1),
                ("sitting-height", Side.Unknown, 0.92, "m", 1),
                ("squat-load", Side.Unknown, 80, "kg", 1),
                ("squat-reps", Side.Unknown, 5, "reps", 1),
                ("tuck-jump", Side.Unknown, 3, "faults", 1),
            ],
            typed
                .Select(s => (s.Test, s.Side, s.Value, s.Unit, s.TrialNumber!.Value))
                .OrderBy(s => s.Test, StringComparer.Ordinal)
                .ThenBy(s => s.Side)
                .ThenBy(s => s.Item5)
        );
        Assert.Equal(before + typed.Length, squad.Desk.Book.Find("a02")!.History.Screens.Length);
        Assert.Empty(SquadFolder.Read(squad.Folder).Require().Problems.Where(p => p.File == "screens.csv"));
        string athlete = PageText.Of(await squad.Get("/athletes/a02"));
        Assert.Contains("single hop, left", athlete);
        Assert.Contains("142.5 cm", athlete);
        Assert.Contains("Kim, coach", athlete);

        // A second value of the day is the next trial.
        using HttpResponseMessage more = await squad.Post(Page, ("date", "2027-01-03"), ("single-hop-left", "150"));
        Assert.Equal(HttpStatusCode.SeeOther, more.StatusCode);
        Assert.Contains(
            squad.Desk.Book.Find("a02")!.History.Screens,
            s => s is { Test: "single-hop", Side: Side.Left, TrialNumber: 2, Value: 1.5 }
        );
    }

    [Fact]
    public async Task FormSentTwice_IsWrittenOnce_AndInchesAreKeptAsMetres()
    {
        await using OwnSquad squad = await OwnSquad.Open(few: true);
        (string, string)[] form =
        [
            ("once", Guid.NewGuid().ToString()),
            ("units", "InchPound"),
            ("date", "2027-01-03"),
            ("standing-long-jump", "80"),
            ("assessor", "inches"),
        ];
        for (int i = 0; i < 2; i++)
        {
            using HttpResponseMessage answer = await squad.Post(Page, form);
            Assert.Equal(HttpStatusCode.SeeOther, answer.StatusCode);
        }

        ScreenResult once = Assert.Single(squad.Desk.Book.Find("a02")!.History.Screens, s => s.Assessor == "inches");
        Assert.Equal(2.032, once.Value, 1e-9);
    }

    /// <summary>An effusion from 1+ on is a swelling, in this way as in any other.</summary>
    [Fact]
    public async Task EffusionTyped_ClosesAsASwellingDoes()
    {
        await using OwnSquad squad = await OwnSquad.Open(few: true);
        int rulings = squad.Desk.Book.Find("a02")!.Rulings.Length;
        using HttpResponseMessage answer = await squad.Post(Page, ("date", "2027-01-03"), ("knee-effusion-left", "1+"));
        Assert.True(squad.Desk.Book.Find("a02")!.Rulings.Length > rulings);
        Assert.Contains(
            squad.Desk.Book.Find("a02")!.History.Symptoms,
            s => s is { Site: "knee", Side: Side.Left, Kind: "swelling" } && s.Date == new LocalDate(2027, 1, 3)
        );
    }

    [Theory]
    [InlineData("single-hop-left", "1.42", "Single hop, left: 1.42 is outside 10 to 350 cm", "write 142.")]
    [InlineData("single-hop-left", "1420", "Single hop, left: 1420 is outside 10 to 350 cm", "slip of the pen")]
    [InlineData("heel-raises-right", "12.5", "Heel raises, right: 12.5 can't be counted", "whole number")]
    [InlineData("tuck-jump", "11", "Tuck jump: 11 is outside 0 to 10 faults", "Nothing was written")]
    [InlineData("timed-hop-left", "fast", "Timed hop, left: 'fast' is no number", "Nothing was written")]
    [InlineData("knee-effusion-left", "1", "An effusion is 0, trace, 1+, 2+ or 3+", "Nothing was written")]
    [InlineData("squat-load-2", "100", "A set has a load and its repetitions", "Nothing was written")]
    [InlineData("run-up-touch", "300", "from which feet", "Nothing was written")]
    [InlineData("flight-frames", "130", "frames a second of a camera", "Nothing was written")]
    [InlineData("date", "2027-01-05", "A test is of today or of a day before it", "Nothing was written")]
    [InlineData("note", "nothing else", "Write at least one test", "Nothing was written")]
    public async Task SlipOfThePen_IsSaidBesideItsField_AndNothingIsWritten(
        string field,
        string typed,
        string why,
        string what
    )
    {
        await using OwnSquad squad = await OwnSquad.Open(few: true);
        string before = await File.ReadAllTextAsync(squad.At("screens.csv"), TestContext.Current.CancellationToken);
        (string, string)[] form =
            field == "note" ? [("date", "2027-01-03"), (field, typed)]
            : field == "date" ? [(field, typed), ("stature", "180")]
            : [("date", "2027-01-03"), ("stature", "180"), (field, typed)];
        using HttpResponseMessage answer = await squad.Post(Page, form);
        string said = PageText.Of(await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
        string alert = said[said.IndexOf("role=\"alert\"", StringComparison.Ordinal)..];
        alert = alert[..alert.IndexOf("</p>", StringComparison.Ordinal)];
        Assert.Contains(why, alert);
        Assert.Contains(what, alert);
        Assert.Contains("aria-invalid=\"true\"", said);
        // What was typed stands there again.
        Assert.Matches($"name=\"{field}\"[^>]*value=\"{typed}\"|knee-effusion", said);
        Assert.Equal(
            before,
            await File.ReadAllTextAsync(squad.At("screens.csv"), TestContext.Current.CancellationToken)
        );
    }

    [Fact]
    public async Task TouchThatIsNotAboveTheReach_IsAskedAbout()
    {
        await using OwnSquad squad = await OwnSquad.Open(few: true);
        using HttpResponseMessage answer = await squad.Post(
            Page,
            ("date", "2027-01-03"),
            ("standing-reach", "240"),
            ("best-touch", "235")
        );
        Assert.Contains(
            "not above the standing reach",
            PageText.Of(await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken))
        );
    }

    /// <summary>What a page writes is read by the table's reader first, whatever the page believes.</summary>
    [Fact]
    public async Task RowThatTheReaderRefuses_IsNotWritten()
    {
        await using OwnSquad squad = await OwnSquad.Open(few: true);
        byte[] before = File.ReadAllBytes(squad.At("screens.csv"));
        Dictionary<string, string> Row(string value) =>
            new(StringComparer.Ordinal)
            {
                ["athlete"] = "a02",
                ["date"] = "2027-01-03",
                ["test"] = "single-hop",
                ["side"] = "left",
                ["value"] = value,
                ["unit"] = "m",
            };
        Assert.False(
            TypedScreens.Add(squad.Folder, [Row("1.5"), Row("150")]).TryGet(out _, out Quantities.Refusal? refusal)
        );
        Assert.Contains("outside 0.1 to 3.5 m", refusal!.Sentence);
        Assert.EndsWith("Nothing was written.", refusal.Sentence);
        Assert.Equal(before, File.ReadAllBytes(squad.At("screens.csv")));
    }

    [Fact]
    public async Task WhereATestIsNotKnown_TheLadderLeadsToItsField_AndTheAthletesPageToTheForm()
    {
        await using OwnSquad squad = await OwnSquad.Open(
            few: true,
            before: folder =>
                File.WriteAllLines(
                    Path.Combine(folder, "screens.csv"),
                    File.ReadAllLines(Path.Combine(folder, "screens.csv")).Take(1)
                )
        );
        Assert.Contains("href=\"/tests/a03\"", await squad.Get("/athletes/a03"));
        string[] leads =
        [
            .. System
                .Text.RegularExpressions.Regex.Matches(
                    await squad.Get("/athletes/a03/ladder"),
                    "href=\"/tests/a03#(t-[^\"]+)\""
                )
                .Select(m => m.Groups[1].Value)
                .Distinct(),
        ];
        Assert.NotEmpty(leads);
        string page = await squad.Get("/tests/a03");
        Assert.All(leads, l => Assert.Contains($"id=\"{l}\"", page));
    }

    [Fact]
    public async Task NobodyOfThatId_HasNoForm()
    {
        await using OwnSquad squad = await OwnSquad.Open(few: true);
        using HttpResponseMessage answer = await squad.Post("/tests/z99", ("stature", "180"));
        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
    }
}
