using Jumpwright.Athletes;
using Jumpwright.Storage.Stores;
using Jumpwright.Trials;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>The rate of a camera whose frames were counted is typed in a page, and the doubt of what was measured follows from it.</summary>
public sealed class CountedFramesTests
{
    private const string Jump = "frame,event\n118,take-off\n243,touch-down\n";

    /// <summary>The standard uncertainty of an interval between two frames is that of two roundings, 1 / (√6 · rate) (contracts §1).</summary>
    [Theory]
    [InlineData("240", 240)]
    [InlineData("239,76", 239.76)]
    public async Task FileWithoutARate_TakesOneInThePage_AndItsDoubtFollows(string typed, double rate)
    {
        await using SquadSite site = await SquadSite.Open();
        await File.WriteAllTextAsync(
            Path.Combine(site.Folder, "recordings", "phone.csv"),
            Jump,
            TestContext.Current.CancellationToken
        );
        site.Desk.Change(squad => squad.ImportAgain(null, CancellationToken.None)).Require();
        (_, string page) = await site.Get("/import");
        Assert.Contains("Frames a second of the camera", page);
        Assert.Contains("not the rate at which the film is played", page);

        (string, string)[] labels =
        [
            ("file", "recordings/phone.csv"),
            ("athlete", "a02"),
            ("date", "2027-01-03"),
            ("task", "countermovement-jump"),
        ];
        foreach (string wrong in new[] { "19", "5001", "fast", "-240" })
        {
            (_, string no) = await site.Post("/import/labels", [.. labels, ("frames_per_second", wrong)]);
            Assert.Contains("a number from 20 to 5000", no);
            Assert.DoesNotContain("phone.csv", await Table(site));
        }

        await site.Post("/import/labels", [.. labels, ("frames_per_second", typed)]);
        StoredRecording stored = site.Desk.Opened.Recordings.Single(r => r.File == "recordings/phone.csv");
        Assert.Equal(
            (Device.Camera, 1, rate),
            (stored.Device!.Value, stored.TrialCount, stored.Labels.FramesPerSecond!.Value)
        );
        Assert.Equal(1 / (Math.Sqrt(6) * rate), DoubtOfFlight(site, "recordings/phone.csv"), 1e-6);
    }

    /// <summary>
    /// That a refused recording is of frames is known by the kind of its refusal, not by its words: a force file that is refused for a word of
    /// its head about a camera's rate is none.
    /// </summary>
    [Theory]
    [InlineData(Jump, true)]
    [InlineData("# frames_per_second: 5000\nframe,event\n0,take-off\n24000,touch-down\n", true)]
    [InlineData("# frames_per_second: fast\ntime_s,force_N\n0,700\n0.001,700\n", false)]
    public async Task RefusedRecording_IsOfFrames_ByTheKindOfItsRefusal(string text, bool frames)
    {
        await using SquadSite site = await SquadSite.Open();
        await File.WriteAllTextAsync(
            Path.Combine(site.Folder, "recordings", "some.csv"),
            text,
            TestContext.Current.CancellationToken
        );
        site.Desk.Change(squad => squad.ImportAgain(null, CancellationToken.None)).Require();
        StoredRecording stored = site.Desk.Opened.Recordings.Single(r => r.File == "recordings/some.csv");
        Assert.Contains("frames_per_second", stored.Refusal!.Sentence, StringComparison.Ordinal);
        Assert.Equal(frames, App.Intake.Incoming.IsOfFrames(stored));
    }

    /// <summary>Several films of one session are labelled together; a recording that has times of its own is given no rate.</summary>
    [Fact]
    public async Task RateForAllThatLackIt_GoesToFilmsAlone_AndOtherLabelsStay()
    {
        await using SquadSite site = await SquadSite.Open();
        string plate = Directory
            .EnumerateFiles(Path.Combine(site.Folder, "recordings"), "a02*.csv")
            .Order(StringComparer.Ordinal)
            .First(f => File.ReadLines(f).Contains("# task: countermovement-jump") || f.Contains("cmj"));
        string[] files = ["film-1.csv", "film-2.csv", "plate.csv"];
        for (int i = 0; i < files.Length; i++)
        {
            await File.WriteAllTextAsync(
                Path.Combine(site.Folder, "recordings", files[i]),
                i < 2
                    ? Jump.Replace("243", $"{241 + i}")
                    : string.Join('\n', File.ReadAllLines(plate).Where(l => !l.StartsWith('#'))) + " \n",
                TestContext.Current.CancellationToken
            );
        }

        site.Desk.Change(squad => squad.ImportAgain(null, CancellationToken.None)).Require();
        await site.Post(
            "/import/labels-of-all",
            ("intake", ""),
            ("athlete", "a02"),
            ("date", "2027-01-03"),
            ("task", "countermovement-jump"),
            ("frames_per_second", "240")
        );
        StoredRecording[] now =
        [
            .. files.Select(f => site.Desk.Opened.Recordings.Single(r => r.File == "recordings/" + f)),
        ];
        Assert.Equal([240, 240, null], now.Select(r => r.Labels.FramesPerSecond));
        Assert.All(now, r => Assert.Null(r.Refusal));

        // Mended once more, by a form that does not ask for the rate: it stays.
        await site.Post(
            "/import/labels",
            ("file", "recordings/film-1.csv"),
            ("athlete", "a03"),
            ("date", "2027-01-03"),
            ("task", "squat-jump")
        );
        StoredRecording again = site.Desk.Opened.Recordings.Single(r => r.File == "recordings/film-1.csv");
        Assert.Equal((240, "a03"), (again.Labels.FramesPerSecond!.Value, again.Labels.Athlete));
    }

    [Fact]
    public async Task FramesCountedByHand_AreTypedInThePage_KeptAsARecording_AndTakenBackOut()
    {
        await using SquadSite site = await SquadSite.Open();
        int before = site.Desk.Opened.Recordings.Length;
        (string, string)[] film =
        [
            ("athlete", "a02"),
            ("date", "2027-01-03"),
            ("task", "countermovement-jump"),
            ("frames_per_second", "240"),
            ("first", "take-off"),
        ];
        foreach (string wrong in new[] { "", "118", "243, 118", "118, 118", "118; two", "-1, 7" })
        {
            (_, string no) = await site.Post("/import/film", [.. film, ("frames", wrong)]);
            Assert.Contains("each later than the one before", no);
            Assert.Equal(before, site.Desk.Opened.Recordings.Length);
        }

        (_, string page) = await site.Post("/import/film", [.. film, ("frames", "118, 243")]);
        Assert.Contains("1 recording: 1 measured", page);
        StoredRecording stored = site.Desk.Opened.Recordings.Single(r => r.File.Contains("film-a02"));
        Assert.Equal((Device.Camera, 1), (stored.Device!.Value, stored.TrialCount));
        Trial trial = TrialOf(site, stored.File);
        Assert.Equal(125 / 240.0, trial.Measures.Single(m => m.Name == MeasureNames.FlightTime).Value, 1e-9);
        Assert.Equal(1 / (Math.Sqrt(6) * 240), DoubtOfFlight(site, stored.File), 1e-6);

        string intake = App.Intake.Incoming.All(site.Desk.Journal).First().Entry.Number;
        await site.Post("/import/undo", ("intake", intake));
        Assert.Equal(before, site.Desk.Opened.Recordings.Length);
    }

    private static Trial TrialOf(SquadSite site, string file) =>
        site.Desk.Book.Leaves.SelectMany(l => l.History.Trials).Single(t => t.File == file).Trial;

    private static double DoubtOfFlight(SquadSite site, string file) =>
        TrialOf(site, file).Measures.Single(m => m.Name == MeasureNames.FlightTime).StandardUncertainty;

    private static Task<string> Table(SquadSite site) =>
        File.ReadAllTextAsync(Path.Combine(site.Folder, "trials.csv"), TestContext.Current.CancellationToken);
}
