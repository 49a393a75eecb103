using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace Jumpwright.Simulation.Defects;

/// <summary>The defects that recordings are spoiled with, by id.</summary>
public static class DefectList
{
    public static ImmutableArray<Defect> All { get; } =
    [
        new("decimal-commas", "Numbers written with decimal commas.", DecimalCommas),
        new(
            "truncated",
            "Cut off in the middle of a line, before take-off.",
            bytes => bytes[..(int)(bytes.Length * 0.35)]
        ),
        new("gap", "A tenth of a second of samples is missing.", bytes => DropLines(bytes, 0.45, 0.012)),
        new("repeated-times", "Time stamps repeat.", RepeatTimes),
        new("header-only", "A header without data.", bytes => Lines(bytes, (_, index, _) => index < 0)),
        new("kilonewtons", "Kilonewtons under a header that says newtons.", bytes => Scale(bytes, 0.001)),
        new("upside-down", "Forces with the wrong sign.", bytes => Scale(bytes, -1)),
        new("saturated", "The plate ends below the push's peak.", Saturate),
        new("not-a-number", "Words where numbers belong.", bytes => ReplaceLine(bytes, 0.5, "0.0,error,error")),
        new("empty", "Nothing at all.", _ => []),
        new("bom-crlf", "A byte-order mark and CRLF: repaired, not refused.", BomAndCrLf),
    ];

    /// <summary>The defect of that id.</summary>
    /// <exception cref="KeyNotFoundException">There is none.</exception>
    public static Defect Find(string id) =>
        All.FirstOrDefault(d => string.Equals(d.Id, id, StringComparison.Ordinal))
        ?? throw new KeyNotFoundException($"No defect '{id}'. There are: {string.Join(", ", All.Select(d => d.Id))}.");

    private static byte[] DecimalCommas(byte[] bytes) =>
        Lines(
            bytes,
            (line, index, _) => true,
            (line, index) => index < 0 ? line : line.Replace(',', ';').Replace('.', ',')
        );

    private static byte[] DropLines(byte[] bytes, double at, double part) =>
        Lines(bytes, (_, index, count) => index < 0 || index < count * at || index > count * (at + part));

    private static byte[] RepeatTimes(byte[] bytes)
    {
        string? last = null;
        return Lines(
            bytes,
            (_, _, _) => true,
            (line, index) =>
            {
                string time = line.Split(',')[0];
                string now = index > 0 && index % 3 == 0 && last is not null ? last + line[time.Length..] : line;
                last = time;
                return now;
            }
        );
    }

    /// <summary>Cut off at 1.6 times the median force, which in a jump from standing is near its weight.</summary>
    private static byte[] Saturate(byte[] bytes)
    {
        List<double> values = [];
        _ = Map(
            bytes,
            v =>
            {
                values.Add(v);
                return v;
            }
        );
        values.Sort();
        double end = 1.6 * values[values.Count / 2];
        return Map(bytes, v => Math.Min(v, end));
    }

    private static byte[] Scale(byte[] bytes, double by) => Map(bytes, v => v * by);

    private static byte[] Map(byte[] bytes, Func<double, double> map) =>
        Lines(
            bytes,
            (_, _, _) => true,
            (line, index) =>
            {
                if (index < 0)
                {
                    return line;
                }

                string[] cells = line.Split(',');
                for (int i = 1; i < cells.Length; i++)
                {
                    cells[i] = map(double.Parse(cells[i], CultureInfo.InvariantCulture))
                        .ToString("0.#####", CultureInfo.InvariantCulture);
                }

                return string.Join(',', cells);
            }
        );

    private static byte[] ReplaceLine(byte[] bytes, double at, string with) =>
        LinesOf(bytes, (line, index, count) => index == (int)(count * at) ? with : line);

    private static byte[] BomAndCrLf(byte[] bytes) =>
        [.. Encoding.UTF8.Preamble, .. Encoding.UTF8.GetBytes(Encoding.UTF8.GetString(bytes).Replace("\n", "\r\n"))];

    private static byte[] Lines(
        byte[] bytes,
        Func<string, int, int, bool> keep,
        Func<string, int, string>? change = null
    ) => LinesOf(bytes, (line, index, count) => keep(line, index, count) ? change?.Invoke(line, index) ?? line : null);

    /// <summary>Changes each line; index −1 stands for metadata and header, then 0, 1, 2 … for data.</summary>
    private static byte[] LinesOf(byte[] bytes, Func<string, int, int, string?> change)
    {
        string[] lines = Encoding.UTF8.GetString(bytes).TrimEnd('\n').Split('\n');
        int header = Array.FindIndex(lines, l => !l.StartsWith('#'));
        int count = lines.Length - header - 1;
        StringBuilder text = new(bytes.Length);
        for (int i = 0; i < lines.Length; i++)
        {
            if (change(lines[i], Math.Max(-1, i - header - 1), count) is { } line)
            {
                text.Append(line).Append('\n');
            }
        }

        return Encoding.UTF8.GetBytes(text.ToString());
    }
}
