using System.Globalization;
using System.Text;
using Jumpwright.Quantities;
using Jumpwright.Recordings;

namespace Jumpwright.Tests.Recordings;

public class RecordingTests
{
    private static Outcome<Recording> Read(string text, RecordingLabels? manifest = null) =>
        Recording.From(Encoding.UTF8.GetBytes(text), manifest);

    private static string Sentence(string text) =>
        Read(text).TryGet(out _, out Refusal? refusal) ? "(measured)" : refusal.Sentence;

    /// <summary>A plain one-plate file: 0.4 s at 1000 Hz of 700.25 N.</summary>
    private static string Plain(string header = "time_s,force_N", int rows = 400, Func<int, string>? row = null) =>
        header
        + "\n"
        + string.Concat(Enumerable.Range(0, rows).Select(i => (row?.Invoke(i) ?? $"{Time(i)},700.25") + "\n"));

    private static string Time(int i) => (i / 1000.0).ToString("0.000", CultureInfo.InvariantCulture);

    [Fact]
    public void Force_OnePlate_GivesRateFromTheLineThroughAllStamps()
    {
        var force = Assert.IsType<ForceRecording>(Read(Plain()).Require());
        Assert.Equal(1000, force.RateHz, 6);
        Assert.Equal(0, force.StartS, 9);
        Assert.Equal(400, force.TotalN.Length);
        Assert.Equal(700.25, force.TotalN.Span[17]);
        Assert.False(force.HasTwoPlates);
        Assert.Empty(force.Warnings);
    }

    /// <summary>400 Hz written to the millisecond: every second stamp lies half a millisecond beside its instant, sent up or down.</summary>
    private static string MillisecondStamps(Func<int, bool> up, int late = -1) =>
        Plain(
            rows: 3200,
            row: i =>
            {
                int halves =
                    (5 * i)
                    + (
                        i % 2 == 0 ? 0
                        : up(i) ? 1
                        : -1
                    );
                int milliseconds = (halves / 2) + (i == late ? 1 : 0);
                return (milliseconds / 1000.0).ToString("0.000", CultureInfo.InvariantCulture) + ",700.25";
            }
        );

    public static TheoryData<string, Func<int, bool>> Roundings =>
        new()
        {
            { "always up", _ => true },
            { "up twice and down once, as binary rounding does", i => i % 3 != 0 },
            { "up at first and down later", i => i < 1600 },
        };

    /// <summary>Nothing is uneven but the writing, which errs to one side more often than to the other.</summary>
    [Theory]
    [MemberData(nameof(Roundings))]
    public void Clock_WrittenToTheMillisecond_IsEvenWithinItsDigits(string rounding, Func<int, bool> up)
    {
        var force = Assert.IsType<ForceRecording>(Read(MillisecondStamps(up)).Require());
        Assert.True(Math.Abs(force.RateHz - 400) < 0.04, $"{rounding}: {force.RateHz} Hz");
        Assert.Equal(0, force.StartS, 0.0006);
    }

    /// <summary>The same clock, of which one stamp comes a millisecond too late, is uneven still.</summary>
    [Fact]
    public void Clock_WrittenToTheMillisecond_WithOneStampLate_IsUneven() =>
        Assert.Contains(
            "not evenly spaced",
            Sentence(MillisecondStamps(i => i % 3 != 0, late: 1600)),
            StringComparison.Ordinal
        );

    [Fact]
    public void Force_TwoPlates_TotalIsTheirSum()
    {
        var force = Assert.IsType<ForceRecording>(
            Read(Plain("time_s,force_left_N,force_right_N", row: i => $"{Time(i)},340.5,{-i}")).Require()
        );
        Assert.True(force.HasTwoPlates);
        Assert.Equal(340.5 - 12, force.TotalN.Span[12]);
    }

    [Fact]
    public void Labels_OfTheManifest_WinOverTheFile()
    {
        string text = "# athlete: a01\n# task: squat-jump\n# body_mass_kg: 71.5\n# limb: left\n" + Plain();
        RecordingLabels labels = Read(text, new RecordingLabels(Task: JumpTask.DropJump)).Require().Labels;
        Assert.Equal("a01", labels.Athlete);
        Assert.Equal(JumpTask.DropJump, labels.Task);
        Assert.Equal(71.5, labels.BodyMassKg);
        Assert.Equal(Limb.Left, labels.Limb);
    }

    [Theory]
    [InlineData("450")]
    [InlineData("1200")]
    [InlineData("240")]
    public void Force_RatesWhoseStepIsNoRoundNumber_AreRegular(string hz)
    {
        double rate = double.Parse(hz, CultureInfo.InvariantCulture);
        string text = Plain(rows: 3000, row: i => $"{(i / rate).ToString("0.0000", CultureInfo.InvariantCulture)},5");
        Assert.Equal(rate, Assert.IsType<ForceRecording>(Read(text).Require()).RateHz, 2);
    }

    [Fact]
    public void Force_TimesOfSixSignificantDigits_AreRegular()
    {
        string text = Plain(
            rows: 9000,
            row: i => $"{(1 + (i / 450.0)).ToString("G6", CultureInfo.InvariantCulture)},5"
        );
        Assert.Equal(450, Assert.IsType<ForceRecording>(Read(text).Require()).RateHz, 2);
    }

    [Fact]
    public void Force_ByteOrderMarkCarriageReturnsAndNamedUnits_AreRepairedWithAWarningEach()
    {
        string text = "\uFEFF" + Plain("time_ms,force_kN", row: i => $"{i},0.70025").Replace("\n", "\r\n");
        var force = Assert.IsType<ForceRecording>(Read(text).Require());
        Assert.Equal(1000, force.RateHz, 6);
        Assert.Equal(700.25, force.TotalN.Span[5], 9);
        Assert.Equal(4, force.Warnings.Length);
    }

    [Fact]
    public void Force_FurtherColumns_AreIgnoredWithAWarning()
    {
        string text = Plain("sync,time_s,force_N,comment", row: i => $"x,{Time(i)},700,left foot");
        var force = Assert.IsType<ForceRecording>(Read(text).Require());
        Assert.Equal(700, force.TotalN.Span[3]);
        Assert.Equal(2, force.Warnings.Length);
    }

    [Theory]
    [InlineData("", "The file is empty")]
    [InlineData("# task: squat-jump\n", "no header")]
    [InlineData("time_s,force_N\n", "Line 1: a header without data")]
    [InlineData("zeit,kraft\n0,1\n", "Line 1: the columns 'zeit,kraft' are not those of a recording")]
    [InlineData("time_s;force_N\n0;1\n", "Line 1: the columns are separated by semicolons")]
    [InlineData("time_s,force_left_N\n0,1\n", "Line 1: the column force_right_N is missing")]
    [InlineData("# task: cartwheel\ntime_s,force_N\n", "Line 1: the task 'cartwheel' is not known")]
    [InlineData("# external_load_kg: heavy\ntime_s,force_N\n", "Line 1: external_load_kg 'heavy'")]
    [InlineData("frame,event\n1,take-off\n9,touch-down\n", "frames_per_second")]
    [InlineData("# frames_per_second: 240\nframe,event\n1,take-off\n9,take-off\n", "Line 4: two events")]
    [InlineData("# frames_per_second: 240\nframe,event\n9,take-off\n1,touch-down\n", "Line 4: frame 1")]
    [InlineData("# frames_per_second: 30\nframe,event\n0,take-off\n100,touch-down\n", "capture rate")]
    [InlineData(
        "# frames_per_second: 30\nframe,event\n0,touch-down\n100,take-off\n",
        "longer than 2 s: check the frame numbers"
    )]
    [InlineData("contact_s,flight_s\n0.2,0.5\n,0.4\n", "Line 3: contact_s is empty")]
    [InlineData("contact_s,flight_s\n200,500\n", "Line 2: a flight of 500 s would be a jump over 1.2 m")]
    public void Reading_WhatCannotBeTrusted_IsRefusedWithItsSentence(string text, string part) =>
        Assert.Contains(part, Sentence(text), StringComparison.Ordinal);

    [Theory]
    [InlineData(200, "0.200,", "Line 202: force_N is empty")]
    [InlineData(200, "0.200", "Line 202: 1 of 2 values")]
    [InlineData(200, "0.200,NaN", "Line 202: force_N is 'NaN', not a number")]
    [InlineData(200, "0.200,7oo", "Line 202: force_N is '7oo', not a number")]
    [InlineData(200, "0,200,700,25", "Line 202: 4 values under 2 columns: if decimals")]
    [InlineData(200, "0.199,700", "Line 202: the time 0.199 s stands twice")]
    [InlineData(200, "0.150,700", "Line 202: the time runs back to 0.15 s")]
    [InlineData(200, "0.200,1e300", "Line 202: force_N is 1E+300")]
    [InlineData(200, "0.200,\u0001", "Line 202: the file is not text")]
    public void Force_OneBadRow_IsRefusedWithItsLine(int row, string instead, string part) =>
        Assert.Contains(
            part,
            Sentence(Plain(row: i => i == row ? instead : $"{Time(i)},700.25")),
            StringComparison.Ordinal
        );

    [Fact]
    public void Force_MissingRows_AreNamedByTheSecondsBetween()
    {
        string text = Plain(row: i => $"{Time(i < 200 ? i : i + 30)},700");
        Assert.Contains(
            "Line 202: samples are missing between 0.199 s and 0.23 s",
            Sentence(text),
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData("0.400,70")]
    [InlineData("0.400,")]
    [InlineData("0.400")]
    [InlineData("0.400,700.2")]
    public void Force_CutInTheLastLine_IsRefused(string last) =>
        Assert.Contains("cut off", Sentence(Plain() + last), StringComparison.Ordinal);

    [Fact]
    public void Force_WithoutANewlineAtItsEnd_IsWhole() =>
        Assert.Equal(401, Assert.IsType<ForceRecording>(Read(Plain() + "0.400,700.25").Require()).TotalN.Length);

    [Fact]
    public void Reading_ZerosOrRubbish_IsRefusedAtOnce()
    {
        Assert.True(!Recording.From(new byte[5_000_000]).TryGet(out _, out Refusal? zeros));
        Assert.Contains("not text", zeros.Sentence, StringComparison.Ordinal);
        byte[] rubbish = new byte[4096];
        new Random(7).NextBytes(rubbish);
        Assert.False(Recording.From(rubbish).TryGet(out _, out _));
    }

    [Fact]
    public void Labels_ThatCannotBe_AreIgnoredWithAWarningAndNeverSilently()
    {
        Recording recording = Read("# body_mass_kg: 700\n# limb: 3\n# date: tomorrow\n" + Plain()).Require();
        Assert.Null(recording.Labels.BodyMassKg);
        Assert.Equal(3, recording.Warnings.Length);
    }

    [Fact]
    public void Frames_GiveIntervalsAndADoubtNoSmallerThanTheFrame()
    {
        var frames = Assert.IsType<IntervalRecording>(
            Read("# frames_per_second: 240\nframe,event\n100,take-off\n220,touch-down\n268,take-off\n380,touch-down\n")
                .Require()
        );
        Assert.Equal(new ContactFlight(null, 0.5), frames.Intervals[0]);
        Assert.Equal(new ContactFlight(0.2, 112 / 240.0), frames.Intervals[1]);
        Assert.Equal(1 / (Math.Sqrt(6) * 240), frames.IntervalStandardUncertaintyS, 12);
        Assert.Equal(240, frames.FramesPerSecond);
    }

    [Fact]
    public void Intervals_FirstContactAndLastFlightMayBeEmpty()
    {
        var mat = Assert.IsType<IntervalRecording>(Read("contact_s,flight_s\n,0.512\n0.187,0.498\n0.190,\n").Require());
        Assert.Equal(3, mat.Intervals.Length);
        Assert.Null(mat.Intervals[0].ContactS);
        Assert.Null(mat.Intervals[2].FlightS);
    }
}
