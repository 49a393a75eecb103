using System.Text;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using NodaTime;
using NodaTime.Text;

namespace Jumpwright.App.Intake;

/// <summary>The manifest of a folder, <c>trials.csv</c> (contracts §1).</summary>
internal static class Manifest
{
    public const string FileName = "trials.csv";

    /// <summary>The rows in order. A manifest without a <c>file</c> column gives one row, which is refused.</summary>
    public static IReadOnlyList<ManifestRow> Read(ReadOnlySpan<byte> bytes)
    {
        IReadOnlyList<CsvRow> rows = Csv.Read(Encoding.UTF8.GetString(bytes));
        string[] header = rows.Count == 0 ? [] : [.. rows[0].Cells.Select(c => c.Trim())];
        if (Array.IndexOf(header, "file") < 0)
        {
            return
            [
                new ManifestRow(
                    1,
                    FileName,
                    RecordingLabels.None,
                    new Refusal(
                        $"{FileName} line 1 has no column 'file'; name the recordings in a column of that name."
                    )
                ),
            ];
        }

        return [.. rows.Skip(1).Where(r => r.Cells.Any(c => c.Trim().Length > 0)).Select(r => Row(header, r))];
    }

    private static ManifestRow Row(string[] header, CsvRow row)
    {
        var faults = new List<string>();
        string? Cell(string column)
        {
            int at = Array.IndexOf(header, column);
            string? text = at >= 0 && at < row.Cells.Count ? row.Cells[at].Trim() : null;
            return string.IsNullOrEmpty(text) ? null : text;
        }

        T? Value<T>(string column, Func<string, T?> read, string wanted)
            where T : struct
        {
            if (Cell(column) is not { } text)
            {
                return null;
            }

            T? value = read(text);
            if (value is null)
            {
                faults.Add($"{column} is '{text}', but should be {wanted}");
            }

            return value;
        }

        string? file = Cell("file")?.Replace('\\', '/');
        if (file is null)
        {
            faults.Add("file is empty, but should name the recording");
        }

        var labels = new RecordingLabels(
            Cell("athlete"),
            Value("date", Date, "a date such as 2027-01-04"),
            Value("task", JumpTasks.Parse, "one of " + string.Join(", ", JumpTasks.All)),
            Value("body_mass_kg", NotNegative, "a mass in kg with a decimal point"),
            Value("external_load_kg", NotNegative, "a mass in kg with a decimal point"),
            Value("drop_height_m", NotNegative, "a height in m with a decimal point"),
            Value("limb", LimbOf, "both, left or right")
        );
        Refusal? refusal =
            faults.Count == 0 ? null : new Refusal($"{FileName} line {row.Line}: {string.Join("; ", faults)}.");
        return new ManifestRow(row.Line, file ?? FileName, labels, refusal);
    }

    private static LocalDate? Date(string text) =>
        LocalDatePattern.Iso.Parse(text) is { Success: true } parsed ? parsed.Value : null;

    private static double? NotNegative(string text) =>
        double.TryParse(
            text,
            System.Globalization.NumberStyles.Float,
            System.Globalization.CultureInfo.InvariantCulture,
            out double value
        )
        && double.IsFinite(value)
        && value >= 0
            ? value
            : null;

    private static Limb? LimbOf(string text) =>
        text switch
        {
            "both" => Limb.Both,
            "left" => Limb.Left,
            "right" => Limb.Right,
            _ => null,
        };
}
