using System.Globalization;
using System.Text;
using Jumpwright.Quantities;
using Jumpwright.Recordings;

namespace Jumpwright.Tests.Recordings;

/// <summary>The fast road and the road for everything give the same answer to the same bit, and the fast one is really taken.</summary>
public class PlainForceTableTests
{
    private static readonly string[] Forces =
    [
        "0.00",
        "0.000000000",
        "#0.0",
        "#0",
        "#0.",
        "#.00",
        "00000.000",
        "0.0000",
        "+0.0;-0.0",
        "0.0E+0",
        "0.00 ;-0.00 ",
    ];

    [Fact]
    public void RandomTables_GiveTheSameAnswerByBothRoads()
    {
        var random = new Random(20270104);
        int plain = 0;
        for (int round = 0; round < 3000; round++)
        {
            byte[] text = Table(random, round);
            plain += Compare(text) ? 1 : 0;
        }

        // Both kinds are tried: of the plain form, and spoiled.
        Assert.InRange(plain, 1000, 2900);
    }

    [Theory]
    [InlineData("time_s,force_N", "0.000,700.25")]
    [InlineData("time_s,force_left_N,force_right_N", "0.000,-0.25,1234.5678901")]
    public void PlainForm_TakesTheFastRoad(string header, string row)
    {
        string[] rest = row.Split(',', 2);
        var text = new StringBuilder(header + "\n");
        for (int i = 0; i < 100; i++)
        {
            text.Append(CultureInfo.InvariantCulture, $"{i / 1000.0:0.000},{rest[1]}\n");
        }

        Assert.True(Compare(Encoding.UTF8.GetBytes(text.ToString())));
    }

    [Theory]
    [InlineData("time_ms,force_N\n")]
    [InlineData("force_N,time_s\n")]
    [InlineData("time_s,force_N,sync\n")]
    [InlineData("time_s,force_N\r\n")]
    public void OtherForms_TakeTheOtherRoad(string header)
    {
        var text = new StringBuilder(header);
        for (int i = 0; i < 100; i++)
        {
            text.Append(CultureInfo.InvariantCulture, $"{i / 1000.0:0.000},700,1\n");
        }

        Assert.False(Compare(Encoding.UTF8.GetBytes(text.ToString())));
    }

    /// <summary>Whether the fast road was taken; fails where the two roads disagree.</summary>
    private static bool Compare(byte[] text)
    {
        var lines = new TextLines(text);
        var warnings = new List<string>();
        if (HeaderOf(ref lines, warnings) is not { } header)
        {
            return false;
        }

        Outcome<Recording> any = ForceTable.ReadAnyForm(ref lines, header, RecordingLabels.None, warnings);
        var again = new TextLines(text);
        var said = new List<string>();
        HeaderOf(ref again, said);
        bool taken =
            !again.CarriageReturns
            && PlainForceTable.Knows(header.Columns)
            && PlainForceTable.TryRead(ref again, header, RecordingLabels.None, said, out Outcome<Recording> fast)
            && Same(any, fast);
        Assert.True(Same(any, Recording.From(text)));
        return taken;
    }

    private static Header? HeaderOf(ref TextLines lines, List<string> warnings)
    {
        lines.Next();
        Header.Read(lines.Current, lines.Number, warnings).TryGet(out Header? header, out _);
        return header;
    }

    private static bool Same(Outcome<Recording> one, Outcome<Recording> other)
    {
        if (!one.TryGet(out Recording? a, out Refusal? refusal))
        {
            Assert.False(other.TryGet(out _, out Refusal? said));
            Assert.Equal(refusal.Sentence, said!.Sentence);
            return true;
        }

        var (left, right) = ((ForceRecording)a, (ForceRecording)other.Require());
        Assert.Equal(Bits(left.TotalN), Bits(right.TotalN));
        Assert.Equal(Bits(left.LeftN), Bits(right.LeftN));
        Assert.Equal(Bits(left.RightN), Bits(right.RightN));
        Assert.Equal(left.StartS, right.StartS);
        Assert.Equal(left.RateHz, right.RateHz);
        Assert.Equal(left.Warnings.AsEnumerable(), right.Warnings);
        return true;
    }

    private static long[] Bits(ReadOnlyMemory<double> values) =>
        [.. values.ToArray().Select(BitConverter.DoubleToInt64Bits)];

    private static byte[] Table(Random random, int round)
    {
        bool two = random.Next(2) == 0;
        int rows = random.Next(15, 60);
        double rate = random.Next(3) == 0 ? 1000 : random.Next(200, 2000);
        string time = random.Next(3) switch
        {
            0 => "0.000000",
            1 => "0.0000",
            _ => "0.00000000000",
        };
        double start = random.Next(4) switch
        {
            0 => 0,
            1 => -3,
            2 => 95,
            _ => random.NextDouble() * 2000,
        };
        string force = Forces[random.Next(Forces.Length)];
        double scale = Math.Pow(10, random.Next(-2, 5));
        var text = new StringBuilder(two ? "time_s,force_left_N,force_right_N\n" : "time_s,force_N\n");
        for (int i = 0; i < rows; i++)
        {
            text.Append((start + (i / rate)).ToString(time, CultureInfo.InvariantCulture));
            for (int column = 0; column < (two ? 2 : 1); column++)
            {
                double value = ((random.NextDouble() * 2) - 0.7) * scale;
                text.Append(',').Append(value.ToString(force, CultureInfo.InvariantCulture));
            }

            text.Append('\n');
        }

        byte[] bytes = Encoding.UTF8.GetBytes(text.ToString());
        if (round % 3 == 0)
        {
            // One byte spoiled somewhere in the rows: a letter, a sign, a comma, an end of line.
            int header = Array.IndexOf(bytes, (byte)'\n') + 1;
            bytes[random.Next(header, bytes.Length)] = (byte)"0123456789.,-+ \n\r\"#eE;x\0"[random.Next(24)];
        }

        return random.Next(20) == 0 ? bytes[..^random.Next(1, 9)] : bytes;
    }
}
