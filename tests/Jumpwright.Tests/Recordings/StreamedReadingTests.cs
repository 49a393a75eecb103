using System.Globalization;
using System.Text;
using Jumpwright.Quantities;
using Jumpwright.Recordings;

namespace Jumpwright.Tests.Recordings;

/// <summary>A file that is read piece by piece through a small buffer is the file that is read whole.</summary>
public class StreamedReadingTests
{
    private const int Window = 4096;

    private static ReadAt Piecewise(byte[] bytes, int most = 777) =>
        (into, offset) =>
        {
            int some = (int)Math.Min(Math.Min(into.Length, most), bytes.Length - offset);
            bytes.AsSpan((int)offset, some).CopyTo(into);
            return some;
        };

    private static Outcome<Recording> Streamed(byte[] bytes) =>
        RecordingReader.Read(Piecewise(bytes), bytes.Length, RecordingLabels.None, Window);

    private static string Rows(int count, bool two, string end = "\n", string also = "")
    {
        var text = new StringBuilder();
        for (int i = 0; i < count; i++)
        {
            text.Append(CultureInfo.InvariantCulture, $"{i / 1000.0:0.000},{700 + (i % 37 / 8.0):0.000}");
            if (two)
            {
                text.Append(CultureInfo.InvariantCulture, $",{300 + (i % 53):0.0}");
            }

            text.Append(also).Append(end);
        }

        return text.ToString();
    }

    public static TheoryData<string, bool> Tables()
    {
        const string one = "time_s,force_N\n";
        const string two = "time_s,force_left_N,force_right_N\n";
        string rows = Rows(3000, two: true);
        return new TheoryData<string, bool>
        {
            { "# athlete: a01\n# task: squat-jump\n" + one + Rows(3000, two: false), true },
            { two + rows, true },
            { two + rows + "3.000,701.5,3", false },
            { two + rows[..^7], false },
            { two + rows + "\n\n", true },
            { two + rows + " \t\n  \n", true },
            { two + rows.Replace("2.900,", "2.9 00,"), false },
            { two + rows.Replace("2.900,", "# a remark\n2.900,"), true },
            { two + rows.Replace("2.900,", "\n2.900,"), true },
            { two + rows.Replace("2.900,", "2.899,"), false },
            { two + rows.Replace("2.900,", "\u00012.900,"), false },
            { two + rows.Replace("2.900,", "\"2.900\","), true },
            { two + rows.Replace("2.900,", "2.900,,"), false },
            { two.Replace("\n", "\r\n") + Rows(3000, two: true, "\r\n"), true },
            { two.Replace("\n", "\r") + Rows(3000, two: true, "\r"), true },
            { "\uFEFF" + two + rows, true },
            { "time_s,force_N,sync\n" + Rows(3000, two: false, also: ",on"), true },
            { one, false },
            { new string('#', 9000) + "\n" + one + Rows(50, two: false), false },
            { "contact_s,flight_s\n" + string.Concat(Enumerable.Repeat("0.210,0.480\n", 900)), true },
            { "# frames_per_second: 240\nframe,event\n" + Frames(600), true },
            { "nothing\n" + rows, false },
        };
    }

    private static string Frames(int count) =>
        string.Concat(
            Enumerable.Range(0, count).Select(i => $"{100 * i},{(i % 2 == 0 ? "touch-down" : "take-off")}\n")
        );

    [Theory]
    [MemberData(nameof(Tables))]
    public void ThroughASmallBuffer_TheSameIsReadOrSaid(string text, bool isRead)
    {
        byte[] bytes = Encoding.UTF8.GetBytes(text);
        bool overlong = text.StartsWith("####", StringComparison.Ordinal);
        Outcome<Recording> whole = Recording.From(bytes);
        Outcome<Recording> streamed = Streamed(bytes);
        Assert.Equal(isRead || overlong, whole.TryGet(out Recording? a, out Refusal? refusal));
        if (!isRead)
        {
            Assert.False(streamed.TryGet(out _, out Refusal? said));
            Assert.Equal(overlong ? Refusals.LineTooLong(1, 64).Sentence : refusal!.Sentence, said.Sentence);
            return;
        }

        Recording b = streamed.Require();
        Assert.Equal(a!.Labels, b.Labels);
        Assert.Equal(a.Warnings.AsEnumerable(), b.Warnings);
        if (a is ForceRecording left)
        {
            var right = (ForceRecording)b;
            Assert.Equal((left.StartS, left.RateHz), (right.StartS, right.RateHz));
            Assert.Equal(left.TotalN.ToArray(), right.TotalN.ToArray());
            Assert.Equal(left.LeftN.ToArray(), right.LeftN.ToArray());
            Assert.Equal(left.RightN.ToArray(), right.RightN.ToArray());
        }
        else
        {
            Assert.Equal(((IntervalRecording)a).Intervals.AsEnumerable(), ((IntervalRecording)b).Intervals);
        }
    }

    [Fact]
    public void TwoGigabytesOfZeros_AreRefusedByTheirBeginning()
    {
        long asked = 0;
        ReadAt zeros = (into, offset) =>
        {
            into.Clear();
            asked = Math.Max(asked, offset + into.Length);
            return into.Length;
        };
        long before = GC.GetAllocatedBytesForCurrentThread();
        Assert.False(Recording.From(zeros, 2L << 30).TryGet(out _, out Refusal? refusal));
        Assert.Equal(Refusals.NotText(1).Sentence, refusal.Sentence);
        Assert.InRange(asked, 1, 1 << 20);
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 1 << 20);
    }

    [Fact]
    public void ALineWithoutEnd_IsRefusedByItsBeginning_AlsoWhereTheFileIsAtHand()
    {
        string sentence = Refusals.LineTooLong(2, 64).Sentence;
        byte[] bytes = Encoding.UTF8.GetBytes("# note: long\n" + new string('1', 600_000));
        Assert.False(Recording.From(bytes).TryGet(out _, out Refusal? refusal));
        Assert.Equal(sentence, refusal.Sentence);
        Assert.False(Recording.From(Piecewise(bytes), bytes.Length).TryGet(out _, out refusal));
        Assert.Equal(sentence, refusal.Sentence);
    }

    [Fact]
    public void AFileThatIsCutWhileItIsRead_IsRead_AsFarAsItGoes()
    {
        byte[] bytes = Encoding.UTF8.GetBytes("time_s,force_N\n" + Rows(2000, two: false));
        Outcome<Recording> read = RecordingReader.Read(
            Piecewise(bytes),
            bytes.Length + 5000,
            RecordingLabels.None,
            Window
        );
        Assert.Equal(2000, ((ForceRecording)read.Require()).TotalN.Length);
    }

    [Fact]
    public void OfALongTable_NoMoreIsHeldThanItsSamples()
    {
        byte[] bytes = Encoding.UTF8.GetBytes("time_s,force_left_N,force_right_N\n" + Rows(100_000, two: true));
        Streamed(bytes).Require();
        long before = GC.GetAllocatedBytesForCurrentThread();
        Streamed(bytes).Require();

        // Three columns with a little room, and the pool's window where the collector took it back meanwhile; the file itself is 2 MB.
        Assert.InRange(
            GC.GetAllocatedBytesForCurrentThread() - before,
            0,
            (long)(3 * 100_000 * sizeof(double) * 1.06) + 300_000
        );
    }
}
