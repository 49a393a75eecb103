using System.IO.Compression;
using System.Text.Json;
using System.Text.RegularExpressions;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Trials;

namespace Jumpwright.Tests.Trials;

/// <summary>
/// Every open recording of real people. Drop landings: J. Adams 2020 (doi:10.13140/RG.2.2.21957.47849; CC BY-SA 4.0). Squat jumps:
/// andrewlba/ACL_squat_jump (MIT). Their READMEs lie beside them.
/// </summary>
public sealed partial class RealPeopleTests
{
    private const string Landings = "drop-landings/recordings.zip";
    private const string SquatJumps = "two-plate-squat-jumps/whole-recordings.zip";
    private static readonly Lazy<JsonElement> LandingTruth = new(() => Truth(Landings));
    private static readonly Lazy<JsonElement> SquatTruth = new(() => Truth(SquatJumps));

    public static TheoryData<string> AllLandings =>
        [
            .. from athlete in Enumerable.Range(1, 5)
            from kind in (string[])["one", "two"]
            from trial in Enumerable.Range(1, 3)
            select $"A0{athlete}-{kind}-{trial}",
        ];

    [Theory]
    [MemberData(nameof(AllLandings))]
    public void DropLanding_WithItsLabelsWithheld_PeakIsTheLargestSample_AndOnlyWhoStandsIsWeighed(string name)
    {
        ForceRecording recording = Bare(name);
        Trial trial = Assert.Single(Measuring.Of(recording, JumpTask.DropLanding).Require());
        JsonElement source = LandingTruth.Value.GetProperty(name).GetProperty("reported_by_source");
        Measure peak = trial.Find(MeasureNames.PeakLandingForce)!;
        Assert.Equal(source.GetProperty("peak_vertical_force_N").GetDouble(), peak.Value, 4 * peak.StandardUncertainty);
        // The largest sample is the peak, but for the plate's zero.
        Assert.Equal(recording.TotalN.Span.ToArray().Max(), peak.Value, 8.0);
        if (name.Contains("two", StringComparison.Ordinal))
        {
            double mass = trial.Value(MeasureNames.BodyWeight) / Gravity.MetresPerSecondSquared;
            double stated = source.GetProperty("body_mass_kg").GetDouble();
            Assert.InRange(mass, 0.985 * stated, 1.015 * stated);
            Assert.InRange(trial.Value(MeasureNames.DropHeight), 0.25, 0.6);
        }
        else
        {
            Assert.Null(trial.Find(MeasureNames.BodyWeight));
            Assert.Null(trial.Find(MeasureNames.DropHeight));
            Assert.Contains(trial.Warnings, w => w.Contains("stands still", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void DropLanding_FromABox_SaysThatTheFallWasNotTheBoxes()
    {
        var labelled = (ForceRecording)Recording.From(Bytes(Landings, "A02-two-1.csv")).Require();
        Trial trial = Assert.Single(Measuring.Of(labelled).Require());
        Assert.Equal(0.96, labelled.Labels.DropHeightM);
        Assert.Contains(trial.Warnings, w => w.Contains("not the 96 cm of the box", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("T003-all", true)]
    [InlineData("T010-all", false)]
    [InlineData("T012-all", true)]
    public void WholeRecording_OfThreeSquatJumps_YieldsThree_WithFlightsAsAnIndependentReadingHasThem(
        string name,
        bool stands
    )
    {
        Trial[] trials = [.. Measuring.Of(Recording.From(Bytes(SquatJumps, name + ".csv")).Require()).Require()];
        JsonElement[] jumps =
        [
            .. SquatTruth.Value.GetProperty(name).GetProperty("our_reading").GetProperty("jumps").EnumerateArray(),
        ];
        Assert.Equal(3, trials.Length);
        Assert.Equal(3, jumps.Length);
        foreach ((Trial trial, JsonElement jump) in trials.Zip(jumps))
        {
            Assert.Equal(jump.GetProperty("flight_s").GetDouble(), trial.Value(MeasureNames.FlightTime), 0.008);
            Assert.Equal(stands, trial.Find(MeasureNames.JumpHeight) is not null);
            Assert.Equal(stands, trial.Find(MeasureNames.BodyWeight) is not null);
            if (!stands)
            {
                Assert.Contains(trial.Warnings, w => w.Contains("never stands still", StringComparison.Ordinal));
            }
        }
    }

    /// <summary>The recording without its metadata lines but the task.</summary>
    private static ForceRecording Bare(string name)
    {
        string text = System.Text.Encoding.UTF8.GetString(Bytes(Landings, name + ".csv"));
        byte[] bare = System.Text.Encoding.UTF8.GetBytes(MetadataLine().Replace(text, ""));
        var recording = (ForceRecording)Recording.From(bare).Require();
        Assert.Null(recording.Labels.BodyMassKg);
        Assert.Null(recording.Labels.DropHeightM);
        return recording;
    }

    private static JsonElement Truth(string archive) =>
        JsonDocument.Parse(Bytes(archive, "truth.json")).RootElement.Clone();

    private static byte[] Bytes(string archive, string entry)
    {
        using var zip = new ZipArchive(new MemoryStream(Recorded.Bytes(archive)));
        using Stream stream = zip.GetEntry(entry)!.Open();
        using var copy = new MemoryStream();
        stream.CopyTo(copy);
        return copy.ToArray();
    }

    [GeneratedRegex("^#.*\n", RegexOptions.Multiline)]
    private static partial Regex MetadataLine();
}
