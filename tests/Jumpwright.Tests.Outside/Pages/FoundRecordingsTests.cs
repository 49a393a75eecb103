using System.Net;
using Jumpwright.Storage.Stores;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>Recordings that lay in the folder before the pages were there, and say nothing of themselves: labelled together, those that go together.</summary>
public sealed class FoundRecordingsTests
{
    [Fact]
    public async Task RecordingsOfNobody_TheTickedOnesAreLabelledTogether_TheOthersStay()
    {
        await using OwnSquad squad = await OwnSquad.Open(few: true, before: AddThree);
        string page = PageText.Of(await squad.Get("/import"));
        Assert.Contains("3 recordings do not say whose jump it is", page);
        Assert.Contains("different ones: choose for each below", page);
        Assert.Equal(3, page.Split("name=\"file\" value=\"recordings/found-").Length - 1 - 3);

        using HttpResponseMessage answer = await squad.Post(
            "/import/labels-of-all",
            ("intake", ""),
            ("some", "yes"),
            ("file", "recordings/found-1.csv"),
            ("file", "recordings/found-3.csv"),
            ("athlete", "a02"),
            ("date", "2027-01-03"),
            ("task", "countermovement-jump")
        );
        string said = PageText.Of(await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
        Assert.Contains("For 2 recordings that is written down now, and they are measured with it.", said);
        StoredRecording[] found =
        [
            .. squad.Desk.Opened.Recordings.Where(r => r.File.Contains("found-", StringComparison.Ordinal)),
        ];
        Assert.Equal(
            ["a02", null, "a02"],
            found.OrderBy(r => r.File, StringComparer.Ordinal).Select(r => r.Labels.Athlete)
        );
        Assert.Contains("One recording does not say whose jump it is", said);
        // One recording is not of several athletes.
        Assert.DoesNotContain("different ones", said);
        Assert.Contains("not known yet", said);
        Assert.Contains("For this one", said);
    }

    /// <summary>A slip of the pen is caught before it stands in a file: a box of 30 m, a day that has not come.</summary>
    [Theory]
    [InlineData("drop_height_m", "30", "A height stepped from lies between 2 cm and 150 cm.")]
    [InlineData("body_mass_kg", "7", "A body mass lies between 15 kg and 300 kg.")]
    [InlineData("external_load_kg", "-20", "A load lies between 0 kg and 500 kg.")]
    [InlineData("date", "2027-01-05", "A recording is of today or of a day before it.")]
    public async Task ALabelThatCannotBe_IsSaid_AndNothingIsWritten(string cell, string typed, string why)
    {
        await using OwnSquad squad = await OwnSquad.Open(few: true, before: AddThree);
        string trials = File.ReadAllText(squad.At("trials.csv"));
        using HttpResponseMessage answer = await squad.Post(
            "/import/labels",
            ("file", "recordings/found-1.csv"),
            ("athlete", "a02"),
            ("task", "drop-jump"),
            (cell, typed)
        );
        Assert.Contains(
            why,
            PageText.Of(await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken)),
            StringComparison.Ordinal
        );
        Assert.Equal(trials, File.ReadAllText(squad.At("trials.csv")));
    }

    /// <summary>Three jumps as a device writes them.</summary>
    private static void AddThree(string folder)
    {
        string recordings = Path.Combine(folder, "recordings");
        string[] jumps = [.. Directory.EnumerateFiles(recordings, "*cmj*.csv").Order(StringComparer.Ordinal).Take(3)];
        foreach ((string jump, int i) in jumps.Select((j, i) => (j, i + 1)))
        {
            File.WriteAllLines(
                Path.Combine(recordings, $"found-{i}.csv"),
                File.ReadAllLines(jump).Where(l => !l.StartsWith('#'))
            );
        }
    }
}
