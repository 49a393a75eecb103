using System.Text;

namespace Jumpwright.Tests.Recordings.C3d;

internal enum Order
{
    Intel,
    Dec,
    Mips,
}

/// <summary>One analog channel: what a program wrote about it and its stored samples.</summary>
internal sealed record Channel(string Unit, double Scale, int Offset, Func<int, double> Stored);

/// <summary>One force plate: type, channels from 1, four corners (x y z each), calibration matrix by columns.</summary>
internal sealed record PlateEntry(int Type, int[] Channels, double[] Corners, double[]? Matrix = null);

/// <summary>
/// Writes C3D files by the format's user guide, for the tests alone: header, parameters in the order given, frames. It shares
/// no line with the reader.
/// </summary>
internal sealed record C3dWriter
{
    /// <summary>A plate in a room whose z axis points up, written as usual: its own z axis points down.</summary>
    public static readonly double[] ZDown = [500, 0, 0, 0, 0, 0, 0, 500, 0, 500, 500, 0];

    /// <summary>The corners numbered the other way round, so that the plate's own z axis points up.</summary>
    public static readonly double[] ZUp = [500, 500, 0, 0, 500, 0, 0, 0, 0, 500, 0, 0];

    public Order Order { get; init; }

    public bool Floating { get; init; }

    public int Points { get; init; } = 2;

    public int Frames { get; init; } = 800;

    public int FirstFrame { get; init; } = 1;

    public int SamplesPerFrame { get; init; } = 10;

    public double FrameRate { get; init; } = 100;

    public double? AnalogRate { get; init; }

    public double GenScale { get; init; } = 1;

    public string? Format { get; init; }

    public string? YScreen { get; init; } = "+Z";

    public int[]? Zero { get; init; } = [0, 0];

    public Channel[] Channels { get; init; } = [];

    public PlateEntry[] Plates { get; init; } = [];

    /// <summary>Parameters left out, as GROUP:NAME.</summary>
    public string[] Without { get; init; } = [];

    /// <summary>Frames by the parameter; null says the truth.</summary>
    public int? FramesSaid { get; init; }

    public byte[] Write()
    {
        byte[] parameters = Parameters();
        int blocks = (parameters.Length + 511) / 512;
        var file = new List<byte>();
        file.AddRange([2, 0x50]);
        Word(file, Points);
        Word(file, Channels.Length * SamplesPerFrame);
        Word(file, FirstFrame);
        Word(file, FirstFrame + (FramesSaid ?? Frames) - 1);
        Word(file, 10);
        Real(file, Floating ? -0.1 : 0.1);
        Word(file, 2 + blocks);
        Word(file, SamplesPerFrame);
        Real(file, FrameRate);
        Pad(file, 512);
        file.AddRange(parameters);
        file[514] = (byte)blocks;
        Pad(file, 512 * (1 + blocks));
        for (int frame = 0; frame < Frames; frame++)
        {
            for (int point = 0; point < Points * 4; point++)
            {
                Value(file, point);
            }

            for (int s = 0; s < SamplesPerFrame; s++)
            {
                foreach (Channel channel in Channels)
                {
                    Value(file, channel.Stored((frame * SamplesPerFrame) + s));
                }
            }
        }

        Pad(file, (file.Count + 511) / 512 * 512);
        return [.. file];
    }

    private byte[] Parameters()
    {
        var to = new List<byte> { 1, 0x50, 0, (byte)(84 + (int)Order) };
        // Parameters may stand before their group, and in any order.
        Words(to, 1, "POINT:USED", [], [Points]);
        Group(to, 1, "POINT");
        Reals(to, 1, "POINT:SCALE", [], [Floating ? -0.1 : 0.1]);
        Reals(to, 1, "POINT:RATE", [], [FrameRate]);
        Words(to, 1, "POINT:FRAMES", [], [FramesSaid ?? Frames]);
        Text(to, 1, "POINT:Y_SCREEN", YScreen is null ? [] : [YScreen]);
        Group(to, 2, "ANALOG");
        Words(to, 2, "ANALOG:USED", [], [Channels.Length]);
        Reals(to, 2, "ANALOG:RATE", [], [AnalogRate ?? (FrameRate * SamplesPerFrame)]);
        Reals(to, 2, "ANALOG:GEN_SCALE", [], [GenScale]);
        Reals(to, 2, "ANALOG:SCALE", [Channels.Length], [.. Channels.Select(c => c.Scale)]);
        Words(to, 2, "ANALOG:OFFSET", [Channels.Length], [.. Channels.Select(c => c.Offset)]);
        Text(to, 2, "ANALOG:UNITS", [.. Channels.Select(c => c.Unit)]);
        Text(to, 2, "ANALOG:FORMAT", Format is null ? [] : [Format]);
        Group(to, 3, "FORCE_PLATFORM");
        int rows = Plates.Length == 0 ? 0 : Plates.Max(p => p.Channels.Length);
        Words(to, 3, "FORCE_PLATFORM:USED", [], [Plates.Length]);
        Words(to, 3, "FORCE_PLATFORM:TYPE", [Plates.Length], [.. Plates.Select(p => p.Type)]);
        Words(
            to,
            3,
            "FORCE_PLATFORM:CHANNEL",
            [rows, Plates.Length],
            [.. Plates.SelectMany(p => p.Channels.Concat(Enumerable.Repeat(0, rows - p.Channels.Length)))]
        );
        Reals(to, 3, "FORCE_PLATFORM:CORNERS", [3, 4, Plates.Length], [.. Plates.SelectMany(p => p.Corners)]);
        if (Plates.Any(p => p.Matrix is not null))
        {
            Reals(
                to,
                3,
                "FORCE_PLATFORM:CAL_MATRIX",
                [6, 6, Plates.Length],
                [.. Plates.SelectMany(p => p.Matrix ?? new double[36])]
            );
        }

        if (Zero is not null)
        {
            Words(to, 3, "FORCE_PLATFORM:ZERO", [2], Zero);
        }

        to.AddRange([0, 0]);
        return [.. to];
    }

    private void Group(List<byte> to, int id, string name)
    {
        to.AddRange([(byte)name.Length, (byte)-id, .. Encoding.ASCII.GetBytes(name)]);
        Word(to, 3 + 4);
        to.Add(4);
        to.AddRange("info"u8);
    }

    private void Words(List<byte> to, int group, string name, int[] sizes, int[] values)
    {
        var data = new List<byte>();
        foreach (int value in values)
        {
            Word(data, value);
        }

        Parameter(to, group, name, 2, sizes, data);
    }

    private void Reals(List<byte> to, int group, string name, int[] sizes, double[] values)
    {
        var data = new List<byte>();
        foreach (double value in values)
        {
            Real(data, value);
        }

        Parameter(to, group, name, 4, sizes, data);
    }

    private void Text(List<byte> to, int group, string name, string[] texts)
    {
        if (texts.Length == 0)
        {
            return;
        }

        int width = texts.Max(t => t.Length);
        Parameter(
            to,
            group,
            name,
            -1,
            [width, texts.Length],
            [.. texts.SelectMany(t => Encoding.ASCII.GetBytes(t.PadRight(width)))]
        );
    }

    private void Parameter(List<byte> to, int group, string fullName, sbyte type, int[] sizes, List<byte> data)
    {
        if (Without.Contains(fullName))
        {
            return;
        }

        string name = fullName.Split(':')[1];
        to.AddRange([(byte)name.Length, (byte)group, .. Encoding.ASCII.GetBytes(name)]);
        Word(to, 2 + 1 + 1 + sizes.Length + data.Count + 1);
        to.Add((byte)type);
        to.Add((byte)sizes.Length);
        to.AddRange(sizes.Select(s => (byte)s));
        to.AddRange(data);
        to.Add(0);
    }

    private void Value(List<byte> to, double value)
    {
        if (Floating)
        {
            Real(to, value);
        }
        else
        {
            Word(to, (int)Math.Round(value));
        }
    }

    private void Word(List<byte> to, int value)
    {
        byte low = (byte)(value & 0xFF);
        byte high = (byte)((value >> 8) & 0xFF);
        to.AddRange(Order == Order.Mips ? [high, low] : [low, high]);
    }

    private void Real(List<byte> to, double value)
    {
        if (Order != Order.Dec)
        {
            byte[] bytes = BitConverter.GetBytes((float)value);
            to.AddRange(Order == Order.Mips ? bytes.Reverse() : bytes);
            return;
        }

        // VAX F: an IEEE single times four, its two halves swapped (same fraction, bias 128 with the fraction below one).
        uint bits = value == 0 ? 0 : BitConverter.SingleToUInt32Bits((float)value * 4);
        to.AddRange([(byte)(bits >> 16), (byte)(bits >> 24), (byte)bits, (byte)(bits >> 8)]);
    }

    private static void Pad(List<byte> to, int length) => to.AddRange(new byte[Math.Max(0, length - to.Count)]);
}
