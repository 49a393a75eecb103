using System.Text;
using System.Text.RegularExpressions;
using Jumpwright.Recordings;
using Jumpwright.Storage.Stores;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>What came of each file that was handed over: measured as what, refused for what, here already since when. None goes in silence.</summary>
public sealed partial class IntakeReceiptTests
{
    [Fact]
    public async Task RefusedFiles_AreToldApartByTheKindOfTheirRefusal_InPageAndStore()
    {
        await using OwnSquad squad = await OwnSquad.Open(few: true);
        string[] jump = Jump(squad);
        string intake = Guid.NewGuid().ToString();
        await Hand(squad, intake, "cartwheel.csv", ["# task: cartwheel", .. jump]);
        await Hand(squad, intake, "cut.csv", ["# task: countermovement-jump", .. jump[..^40], "3.1,70"], cut: true);
        await Hand(squad, intake, "nothing-said.csv", jump);
        await Hand(squad, intake, "walk.csv", ["# task: countermovement-jump", .. Sine()]);
        string page = await Finish(squad, intake);

        Assert.Contains("Refused, task not known: Line 1: the task 'cartwheel' is not known", page);
        Assert.Contains("Refused, cut off:", page);
        Assert.Contains("Refused, task not said:", page);
        Assert.Contains("Refused, never still:", page);
        Assert.Equal(
            [
                ("cartwheel.csv", RefusedFor.TaskNotKnown),
                ("cut.csv", RefusedFor.CutOff),
                ("nothing-said.csv", RefusedFor.TaskNotSaid),
                ("walk.csv", RefusedFor.NeverStill),
            ],
            KindsIn(squad.Desk.Opened.Recordings)
        );

        string refused = PageText.Of(await squad.Get("/refused"));
        Assert.Contains("cut off: Line", refused);
        Assert.Contains("task not known: Line", refused);

        // Opened again from the disk, the kinds are there still.
        using Store store = Store.Open(squad.At("jumpwright.db"), TimeProvider.System).Require();
        Assert.Equal(4, KindsIn(store.Recordings()).Length);
    }

    [Fact]
    public async Task RefusedFilesOfNoKnownTask_AreNotTicked_AndTheirLabelFormIsOffered_AllCanBeAskedFor()
    {
        await using OwnSquad squad = await OwnSquad.Open(few: true);
        string[] jump = Jump(squad);
        string intake = Guid.NewGuid().ToString();
        await Hand(squad, intake, "cartwheel.csv", ["# task: cartwheel", .. jump]);
        await Hand(squad, intake, "nobodys.csv", ["# task: countermovement-jump", .. jump[..^1]]);
        string page = await Finish(squad, intake);

        Assert.DoesNotMatch("value=\"recordings/cartwheel.csv\" checked", page);
        Assert.Matches("value=\"recordings/nobodys.csv\" checked", page);
        Match offered = Assert.Single(LabelsLink().Matches(page));
        Assert.Contains("cartwheel.csv", offered.Groups[1].Value);
        string mend = await squad.Get(offered.Groups[1].Value.Split('#')[0]);
        Assert.Matches("<details id=\"mend-0\" open>\\s*<summary>cartwheel.csv", PageText.Of(mend));

        using HttpResponseMessage none = await squad.Post(
            "/import/labels-of-all",
            ("intake", intake),
            ("some", "yes"),
            ("task", "countermovement-jump")
        );
        Assert.Contains(
            "None was ticked",
            PageText.Of(await none.Content.ReadAsStringAsync(TestContext.Current.CancellationToken))
        );

        // Who knows that all are of one task says so by the other button.
        using HttpResponseMessage answer = await squad.Post(
            "/import/labels-of-all",
            ("intake", intake),
            ("some", "all"),
            ("athlete", "a02"),
            ("date", "2027-01-03"),
            ("task", "countermovement-jump")
        );
        Assert.Contains(
            "For 2 recordings",
            PageText.Of(await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken))
        );
        Assert.All(
            squad.Desk.Opened.Recordings.Where(r =>
                r.File.Contains("cartwheel", StringComparison.Ordinal)
                || r.File.Contains("nobodys", StringComparison.Ordinal)
            ),
            r => Assert.Null(r.RefusedFor)
        );
    }

    [Fact]
    public async Task MeasuredFile_IsListedWithTaskAthleteHeightItsDoubtAndWarnings()
    {
        await using OwnSquad squad = await OwnSquad.Open(few: true);
        string[] head = ["# athlete: a02", "# date: 2027-01-03", "# task: countermovement-jump"];
        // A column too many is a warning in the reader's own words.
        string[] jump = [.. Jump(squad).Select((l, i) => l + (i == 0 ? ",sync" : ",0"))];
        string intake = Guid.NewGuid().ToString();
        await Hand(squad, intake, "monday.csv", [.. head, .. jump]);
        await Hand(squad, intake, "nobodys.csv", ["# task: countermovement-jump", .. jump]);
        string page = await Finish(squad, intake);

        string name = squad.Desk.Book.Find("a02")!.Athlete.Name;
        Assert.Contains($"Measured, 1 trial, countermovement jump, {name}, 3 Jan 2027.", page);
        // Of somebody and of nobody alike.
        Assert.Equal(2, Height().Count(page));
        string receipt = page[page.IndexOf("monday.csv", StringComparison.Ordinal)..];
        Assert.Contains("sync", receipt[..receipt.IndexOf("nobodys.csv", StringComparison.Ordinal)]);
        Quantities.Measure height = squad
            .Desk.Book.Find("a02")!
            .History.Trials.Single(t => t.File == "recordings/monday.csv")
            .Trial.Measures.Single(m => m.Name == "jump_height_m");
        Assert.Equal($"jump height {App.Wording.MeasureWords.Value(height)}", Height().Match(receipt).Value);
    }

    [Fact]
    public async Task FileThatIsHereAlready_IsNamed_WithWhenAndAsWhat_AndTakenInOnce()
    {
        await using OwnSquad squad = await OwnSquad.Open(few: true);
        string[] lines = ["# athlete: a02", "# date: 2027-01-03", "# task: countermovement-jump", .. Jump(squad)];
        string first = Guid.NewGuid().ToString();
        await Hand(squad, first, "monday.csv", lines);
        await Finish(squad, first);
        int recordings = squad.Desk.Opened.Recordings.Length;

        string second = Guid.NewGuid().ToString();
        await Hand(squad, second, "again.csv", lines);
        string before = Directory
            .EnumerateFiles(squad.At("recordings"), "a02*.csv")
            .Order(StringComparer.Ordinal)
            .First();
        await Hand(
            squad,
            second,
            "old.csv",
            await File.ReadAllBytesAsync(before, TestContext.Current.CancellationToken)
        );
        string page = await Finish(squad, second);
        Assert.Equal(recordings, squad.Desk.Opened.Recordings.Length);
        Assert.Contains("2 files were here already", page);
        string today = App.Wording.Dates.Short(NodaTime.SystemClock.Instance.GetCurrentInstant().InUtc().Date);
        Assert.Contains($"Already here, taken in {today}, as monday.csv.", page);
        Assert.Contains($"Already here, as {Path.GetFileName(before)}; it lay in the squad's folder.", page);
        string receipt = page[page.IndexOf("again.csv", StringComparison.Ordinal)..];
        Assert.Contains(
            "Measured, 1 trial, countermovement jump",
            receipt[..receipt.IndexOf("old.csv", StringComparison.Ordinal)]
        );
        // Nothing was taken in, so that nothing can be taken back of it.
        Assert.DoesNotContain($"name=\"intake\" value=\"{second}\"", page);

        // Twice in one handing over: the first is taken, the other is named.
        string third = Guid.NewGuid().ToString();
        await Hand(squad, third, "x.csv", [.. lines, ""]);
        await Hand(squad, third, "y.csv", [.. lines, ""]);
        page = await Finish(squad, third);
        Assert.Contains("The same as x.csv, handed over with it.", page);
    }

    [GeneratedRegex("<a href=\"(/import\\?mend=[^\"]*)\">Write its labels</a>")]
    private static partial Regex LabelsLink();

    [GeneratedRegex(@"jump height \d+\.\d+ ± \d+\.\d+ cm")]
    private static partial Regex Height();

    private static (string, RefusedFor)[] KindsIn(IEnumerable<StoredRecording> recordings) =>
        [
            .. recordings
                .Where(r => r.RefusedFor is not null && !r.File.StartsWith("recordings/a0", StringComparison.Ordinal))
                .Select(r => (Path.GetFileName(r.File), r.RefusedFor!.Value))
                .OrderBy(r => r.Item1, StringComparer.Ordinal),
        ];

    /// <summary>A jump of somebody of the squad, without what says whose and what: its own bytes.</summary>
    private static string[] Jump(OwnSquad squad) =>
        [
            .. File.ReadAllLines(
                    Directory.EnumerateFiles(squad.At("recordings"), "*cmj*.csv").Order(StringComparer.Ordinal).First()
                )
                .Where(l => !l.StartsWith('#')),
        ];

    /// <summary>Five seconds of somebody who sways on and on and never leaves the plate.</summary>
    private static IEnumerable<string> Sine() =>
        Enumerable
            .Range(0, 5000)
            .Select(i =>
                string.Create(
                    System.Globalization.CultureInfo.InvariantCulture,
                    $"{i / 1000.0:0.000},{700 + (250 * Math.Sin(i / 60.0)):0.0}"
                )
            )
            .Prepend("time_s,force_N");

    private static Task Hand(OwnSquad squad, string intake, string name, string[] lines, bool cut = false) =>
        Hand(squad, intake, name, Encoding.UTF8.GetBytes(string.Join('\n', lines) + (cut ? "" : "\n")));

    private static async Task Hand(OwnSquad squad, string intake, string name, byte[] bytes)
    {
        using var content = new ByteArrayContent(bytes);
        using HttpResponseMessage answer = await squad.Client.PostAsync(
            new Uri($"/import/{intake}/file?name={name}", UriKind.Relative),
            content,
            TestContext.Current.CancellationToken
        );
        answer.EnsureSuccessStatusCode();
    }

    /// <summary>Has it taken in, and reads the page of what came of it.</summary>
    private static async Task<string> Finish(OwnSquad squad, string intake)
    {
        using HttpResponseMessage answer = await squad.Client.PostAsync(
            new Uri($"/import/{intake}/finish", UriKind.Relative),
            null,
            TestContext.Current.CancellationToken
        );
        answer.EnsureSuccessStatusCode();
        return PageText.Of(await squad.Get($"/import?done={intake}"));
    }
}
