using System.Globalization;
using Jumpwright.Athletes;
using Jumpwright.Quantities;
using NodaTime;
using NodaTime.Text;

namespace Jumpwright.Storage.Folders.Csv;

/// <summary>Reads typed cells of one row and gathers what is wrong with them; the table's reader decides what that means.</summary>
internal sealed class RowReader(CsvRow row)
{
    private readonly List<string> _faults = row.Fault is null ? [] : [row.Fault];

    public int Line => row.Line;

    /// <summary>The whole row can't be trusted: cells may stand under the wrong heading.</summary>
    public bool IsBroken => row.Fault is not null;

    public bool HasFaults => _faults.Count > 0;

    /// <summary>All faults as one clause, for a problem's sentence.</summary>
    public string Faults => string.Join("; ", _faults);

    public void Fault(string what) => _faults.Add(what);

    public string? Text(string column) => row[column];

    public LocalDate? Date(string column)
    {
        string? cell = row[column];
        if (cell is null)
        {
            return null;
        }

        ParseResult<LocalDate> parsed = LocalDatePattern.Iso.Parse(cell);
        if (parsed.Success && parsed.Value.Year is >= 1900 and <= 2199)
        {
            return parsed.Value;
        }

        Fault(Sentence.Of($"{column} '{Shown(cell)}' is no date: write year-month-day, for example 2027-01-04"));
        return null;
    }

    public double? Number(string column, double least, double most, string unit)
    {
        string? cell = row[column];
        if (cell is null)
        {
            return null;
        }

        const NumberStyles Plain = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint;
        if (!double.TryParse(cell, Plain, CultureInfo.InvariantCulture, out double value) || !double.IsFinite(value))
        {
            Fault(
                cell.Contains(',', StringComparison.Ordinal)
                    ? Sentence.Of($"{column} '{Shown(cell)}' has a decimal comma: write a decimal point")
                : unit.Length == 0 ? Sentence.Of($"{column} '{Shown(cell)}' is no number: write the number alone")
                : Sentence.Of($"{column} '{Shown(cell)}' is no number: write the number alone, in {unit}")
            );
            return null;
        }

        if (value < least || value > most)
        {
            Fault(
                unit.Length == 0
                    ? Sentence.Of($"{column} {Shown(cell)} is outside {Plainly(least)} to {Plainly(most)}: correct it")
                    : Sentence.Of(
                        $"{column} {Shown(cell)} is outside {Plainly(least)} to {Plainly(most)} {unit}: correct it"
                    )
            );
            return null;
        }

        return value;
    }

    public int? Whole(string column, int least, int most)
    {
        double? number = Number(column, least, most, "");
        if (number is { } n && n != Math.Floor(n))
        {
            Fault($"{column} '{Shown(row[column]!)}' must be a whole number");
            return null;
        }

        return (int?)number;
    }

    public Side Side(string column)
    {
        switch (row[column]?.ToLowerInvariant())
        {
            case null:
                return Athletes.Side.Unknown;
            case "left":
                return Athletes.Side.Left;
            case "right":
                return Athletes.Side.Right;
            case "both":
                return Athletes.Side.Both;
            default:
                Fault($"{column} '{Shown(row[column]!)}' must be left, right, both or empty");
                return Athletes.Side.Unknown;
        }
    }

    /// <summary>A cell cut to a length that a sentence can bear.</summary>
    public static string Shown(string cell) => cell.Length <= 40 ? cell : cell[..39] + "…";

    private static string Plainly(double value) => value.ToString("0.###", CultureInfo.InvariantCulture);
}
