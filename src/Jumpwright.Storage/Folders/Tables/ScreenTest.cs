using System.Collections.Immutable;
using System.Globalization;
using Jumpwright.Storage.Folders.Csv;

namespace Jumpwright.Storage.Folders.Tables;

/// <summary>A test that is typed by hand: its unit, and bounds of this house that catch a slip of the pen.</summary>
/// <param name="Id">As in screens.csv.</param>
/// <param name="Unit">Its unit; empty for a test that is not known.</param>
/// <param name="Least">Least value that is believed.</param>
/// <param name="Most">Greatest value that is believed.</param>
internal sealed record ScreenTest(string Id, string Unit, double Least, double Most)
{
    private static readonly ImmutableArray<ScreenTest> Known =
    [
        new("landing-screen", "faults", 0, 30),
        new("standing-reach", "m", 1.0, 3.5),
        new("best-touch", "m", 1.2, 4.5),
        new("standing-long-jump", "m", 0.2, 4.0),
        new("single-hop", "m", 0.1, 3.5),
        new("knee-to-wall", "m", 0, 0.3),
        new("heel-raises", "reps", 0, 300),
        new("squat-load", "kg", 0, 600),
        new("hex-bar-load", "kg", 0, 600),
        new("sitting-height", "m", 0.4, 1.4),
    ];

    /// <summary>The test of that id; an unknown one has no unit and no bounds.</summary>
    public static ScreenTest Find(string? id) =>
        Known.FirstOrDefault(t => t.Id == id) ?? new ScreenTest(id ?? "", "", double.MinValue, double.MaxValue);

    /// <summary>The value in the test's unit. A labelled centimetre is turned into metres and said; a missing unit is not guessed.</summary>
    public (double? Value, string? Unit) InItsUnit(
        double value,
        string? unit,
        RowReader cells,
        CsvRow row,
        ProblemList problems
    )
    {
        if (Unit.Length == 0)
        {
            problems.Add(
                row.File,
                row.Line,
                ProblemWeight.Note,
                $"the test '{RowReader.Shown(Id)}' is not known; it was kept, nothing is decided from it."
            );
            return (value, unit);
        }

        double? scale = unit is null || !unit.Equals(Unit, StringComparison.OrdinalIgnoreCase) ? Scale(unit) : 1;
        if (scale is not { } factor)
        {
            cells.Fault(
                unit is null ? $"the unit is empty: write {Unit}" : $"the unit '{RowReader.Shown(unit)}' must be {Unit}"
            );
            return (null, null);
        }

        decimal exact = value is > -1e12 and < 1e12 ? (decimal)value / (decimal)(1 / factor) : 0;
        double converted = factor == 1 ? value : (double)exact;
        if (factor != 1)
        {
            problems.Add(
                row.File,
                row.Line,
                ProblemWeight.Note,
                $"{Number(value)} {unit} was read as {Number(converted)} {Unit}; write it so."
            );
        }

        if (converted < Least || converted > Most)
        {
            cells.Fault(
                $"{Id} {Number(converted)} {Unit} is outside {Number(Least)} to {Number(Most)} {Unit}: correct it"
            );
            return (null, null);
        }

        return (converted, Unit);
    }

    private double? Scale(string? unit) =>
        (Unit, unit?.ToLowerInvariant()) switch
        {
            ("m", "cm") => 0.01,
            ("m", "mm") => 0.001,
            _ => null,
        };

    private static string Number(double value) => value.ToString("0.####", CultureInfo.InvariantCulture);
}
