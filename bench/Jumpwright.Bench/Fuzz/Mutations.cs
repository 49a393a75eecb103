using System.Globalization;
using System.Text;
using Jumpwright.Simulation.Chance;

namespace Jumpwright.Bench.Fuzz;

/// <summary>Spoils a good file. The same generator gives the same bytes.</summary>
internal static class Mutations
{
    private static readonly string[] Giants =
    [
        "1e308",
        "-1e308",
        "1e-320",
        "99999999999999999999999",
        "9007199254740993",
        "4294967296",
        "-2147483649",
        "NaN",
        "Infinity",
        "-0",
        "0",
        "1e9999999999",
        "0x7F",
        "1,5",
        "\"7\"",
        "",
    ];

    /// <summary>One file of the corpus with one to four things done to it.</summary>
    public static byte[] Of(SeededRandom random)
    {
        byte[] bytes = Pick(random);
        if (random.Chance(0.5))
        {
            return Gently(bytes, random);
        }

        for (int times = 1 + random.Below(4); times > 0; times--)
        {
            bytes = bytes.Length == 0 ? Pick(random) : Once(bytes, random);
        }

        return bytes;
    }

    private static byte[] Pick(SeededRandom random) => FuzzCorpus.Files[random.Below(FuzzCorpus.Files.Length)];

    /// <summary>Alters what was measured and leaves the form whole, so that measuring has to judge it.</summary>
    private static byte[] Gently(byte[] good, SeededRandom random)
    {
        bool binary = good[1] == 0x50;
        byte[] bytes = [.. good];
        int header = good.AsSpan().LastIndexOf("_N\n"u8);
        int from = binary ? 2500 : Math.Max(header + 4, 60);
        for (int k = random.Chance(0.3) ? 400 : random.Below(20); k > 0; k--)
        {
            int at = from + random.Below(bytes.Length - from);
            if (binary)
            {
                bytes[at] = (byte)random.Below(256);
                continue;
            }

            // A digit of the last column only: times stay as they are.
            int end = bytes.AsSpan(at).IndexOf((byte)'\n');
            int digit = end < 4 ? at : at + end - 1 - random.Below(4);
            bytes[digit] = bytes[digit] is >= (byte)'0' and <= (byte)'9'
                ? (byte)('0' + random.Below(10))
                : bytes[digit];
        }

        if (binary || random.Chance(0.5))
        {
            return bytes;
        }

        // Whole lines cut off at the end or doubled in force.
        int cut = bytes.AsSpan(0, from + random.Below(bytes.Length - from)).LastIndexOf((byte)'\n') + 1;
        return random.Chance(0.7) ? bytes[..cut] : Stuck(bytes, cut);
    }

    /// <summary>From there on the last column stands still at one value.</summary>
    private static byte[] Stuck(byte[] bytes, int from)
    {
        string[] lines = Encoding.Latin1.GetString(bytes, from, bytes.Length - from).Split('\n');
        string value = lines[0].Split(',')[^1];
        for (int i = 0; i < lines.Length; i++)
        {
            int comma = lines[i].LastIndexOf(',');
            lines[i] = comma < 0 ? lines[i] : lines[i][..(comma + 1)] + value;
        }

        return [.. bytes.AsSpan(0, from), .. Encoding.Latin1.GetBytes(string.Join('\n', lines))];
    }

    private static byte[] Once(byte[] good, SeededRandom random) =>
        random.Below(14) switch
        {
            0 => Flip(good, random, good.Length),
            1 => Flip(good, random, Math.Min(good.Length, 2500)),
            2 => good[..random.Below(good.Length)],
            3 => good[random.Below(good.Length)..],
            4 => CutOut(good, random),
            5 => Repeat(good, random),
            6 => Splice(good, random),
            7 => SwapColumns(good, random),
            8 => Giant(good, random),
            9 => Level(good, random),
            10 => Word(good, random),
            11 => Blank(good, random),
            12 => [.. FuzzCorpus.Header(random.Below(4)), .. good],
            _ => ReorderLines(good, random),
        };

    private static byte[] Flip(byte[] good, SeededRandom random, int within)
    {
        byte[] bytes = [.. good];
        for (int k = 1 + random.Below(16); k > 0; k--)
        {
            int at = random.Below(within);
            bytes[at] = random.Chance(0.5) ? (byte)(bytes[at] ^ (1 << random.Below(8))) : (byte)random.Below(256);
        }

        return bytes;
    }

    private static byte[] CutOut(byte[] good, SeededRandom random)
    {
        int from = random.Below(good.Length);
        int to = Math.Min(good.Length, from + 1 + random.Below(random.Chance(0.5) ? 40 : good.Length));
        return [.. good.AsSpan(0, from), .. good.AsSpan(to)];
    }

    private static byte[] Repeat(byte[] good, SeededRandom random)
    {
        int from = random.Below(good.Length);
        int to = Math.Min(good.Length, from + 1 + random.Below(2000));
        return [.. good.AsSpan(0, to), .. good.AsSpan(from)];
    }

    private static byte[] Splice(byte[] good, SeededRandom random)
    {
        byte[] other = Pick(random);
        return [.. good.AsSpan(0, random.Below(good.Length)), .. other.AsSpan(random.Below(other.Length))];
    }

    private static byte[] SwapColumns(byte[] good, SeededRandom random)
    {
        string[] lines = Encoding.Latin1.GetString(good).Split('\n');
        int from = random.Below(lines.Length);
        int to = random.Chance(0.5) ? lines.Length : from + random.Below(lines.Length - from);
        for (int i = from; i < to; i++)
        {
            string[] fields = lines[i].Split(',');
            (fields[0], fields[^1]) = (fields[^1], fields[0]);
            lines[i] = string.Join(',', fields);
        }

        return Encoding.Latin1.GetBytes(string.Join('\n', lines));
    }

    private static byte[] Giant(byte[] good, SeededRandom random)
    {
        int at = random.Below(good.Length);
        int from = at == 0 ? 0 : good.AsSpan(0, at).LastIndexOfAny((byte)',', (byte)'\n') + 1;
        int length = good.AsSpan(from).IndexOfAny((byte)',', (byte)'\n');
        string number = random.Chance(0.3)
            ? ((random.Unit() - 0.5) * Math.Pow(10, random.Below(20))).ToString("R", CultureInfo.InvariantCulture)
            : Giants[random.Below(Giants.Length)];
        return
        [
            .. good.AsSpan(0, from),
            .. Encoding.ASCII.GetBytes(number),
            .. good.AsSpan(length < 0 ? good.Length : from + length),
        ];
    }

    /// <summary>Every digit of a stretch becomes the same one: forces at a limit, times that stand still.</summary>
    private static byte[] Level(byte[] good, SeededRandom random)
    {
        byte[] bytes = [.. good];
        int from = random.Below(bytes.Length);
        int to = Math.Min(bytes.Length, from + random.Below(4000));
        byte digit = (byte)('0' + random.Below(10));
        for (int i = from; i < to; i++)
        {
            bytes[i] = bytes[i] is >= (byte)'0' and <= (byte)'9' ? digit : bytes[i];
        }

        return bytes;
    }

    /// <summary>A word of 16 or 32 bits at its limits, as counts and pointers of a binary file would be.</summary>
    private static byte[] Word(byte[] good, SeededRandom random)
    {
        byte[] bytes = [.. good];
        int at = random.Below(Math.Min(bytes.Length, 2000)) & ~1;
        int length = Math.Min(random.Chance(0.5) ? 2 : 4, bytes.Length - at);
        bytes.AsSpan(at, length).Fill((byte)random.OneOf(0, 255, 127, 128));
        return bytes;
    }

    private static byte[] Blank(byte[] good, SeededRandom random)
    {
        byte[] bytes = [.. good];
        int from = random.Below(bytes.Length);
        int length = Math.Min(bytes.Length - from, random.Below(3000));
        bytes.AsSpan(from, length).Fill((byte)random.OneOf(0, ' ', '\n', '\r', '#', ',', '0'));
        return bytes;
    }

    private static byte[] ReorderLines(byte[] good, SeededRandom random)
    {
        string[] lines = Encoding.Latin1.GetString(good).Split('\n');
        for (int k = 1 + random.Below(20); k > 0; k--)
        {
            int a = random.Below(lines.Length);
            int b = random.Below(lines.Length);
            (lines[a], lines[b]) = (lines[b], lines[a]);
        }

        return Encoding.Latin1.GetBytes(string.Join('\n', lines));
    }
}
