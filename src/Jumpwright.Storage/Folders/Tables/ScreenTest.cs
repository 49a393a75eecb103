using System.Globalization;
using Jumpwright.Athletes;
using Jumpwright.Storage.Folders.Csv;

namespace Jumpwright.Storage.Folders.Tables;

/// <summary>Reads the value of a test that is typed by hand into the test's own unit, and catches slips of the pen.</summary>
internal static class ScreenTest
{
    /// <summary>
    /// The value in the test's unit. A labelled centimetre or millisecond is converted and said; a missing unit is not guessed.
    /// </summary>
    public static (double? Value, string? Unit) InItsUnit(
        string id,
        double value,
        string? unit,
        RowReader cells,
        CsvRow row,
        ProblemList problems
    )
    {
        if (FieldTest.Find(id) is not { } test)
        {
            problems.Add(
                row.File,
                row.Line,
                ProblemWeight.Note,
                $"the test '{RowReader.Shown(id)}' is not known; it was kept, nothing is decided from it."
            );
            return (value, unit);
        }

        if (test.Id == FieldTest.FlightFrames)
        {
            return Frames(test, value, unit, cells);
        }

        double? scale =
            unit is null || !unit.Equals(test.Unit, StringComparison.OrdinalIgnoreCase) ? Scale(test.Unit, unit) : 1;
        if (scale is not { } factor)
        {
            cells.Fault(
                unit is null
                    ? $"the unit is empty: write {test.Unit}"
                    : $"the unit '{RowReader.Shown(unit)}' must be {test.Unit}"
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
                $"{Number(value)} {unit} was read as {Number(converted)} {test.Unit}; write it so."
            );
        }

        if (converted < test.Least || converted > test.Most)
        {
            cells.Fault(
                $"{id} {Number(converted)} {test.Unit} is outside {Number(test.Least)} to {Number(test.Most)} {test.Unit}: "
                    + (Meant(test, converted) is { } meant ? $"write {meant}, or correct it" : "correct it")
            );
            return (null, null);
        }

        return (converted, test.Unit);
    }

    /// <summary>A grade of effusion as a clinician writes it; null where it is none, and then the cells hold the fault.</summary>
    public static double? EffusionGrade(RowReader cells)
    {
        string written = cells.Text("value") ?? "";
        foreach ((string known, double grade) in FieldTest.EffusionGrades)
        {
            if (written.Equals(known, StringComparison.OrdinalIgnoreCase))
            {
                return grade;
            }
        }

        cells.Fault(
            $"the effusion '{RowReader.Shown(written)}' must be one of {string.Join(", ", FieldTest.EffusionGrades.Select(g => g.Written))}"
        );
        return null;
    }

    private static (double? Value, string? Unit) Frames(FieldTest test, double value, string? unit, RowReader cells)
    {
        if (FieldTest.FramesPerSecond(unit?.Replace(" ", "", StringComparison.Ordinal)) is not { } rate)
        {
            cells.Fault(
                $"the unit of {test.Id} must name the capture rate of the camera, 20 to 5000 frames a second, such as frames@240"
            );
            return (null, null);
        }

        if (value < test.Least || value > test.Most || value != Math.Floor(value))
        {
            cells.Fault($"{test.Id} {Number(value)} is no count of frames from 1: correct it");
            return (null, null);
        }

        if (FieldTest.FramesFault(value, rate) is { } fault)
        {
            cells.Fault(fault);
            return (null, null);
        }

        return (value, "frames@" + rate.ToString("0.###", CultureInfo.InvariantCulture));
    }

    /// <summary>What was most likely meant by a value a hundred or a thousand times too large: 0.42 m, not 42.</summary>
    private static string? Meant(FieldTest test, double value)
    {
        double[] smaller = test.Unit switch
        {
            "m" => [100, 1000],
            "s" => [1000, 100],
            _ => [],
        };
        foreach (double by in smaller)
        {
            double meant = value / by;
            if (meant >= test.Least && meant <= test.Most && meant > 0)
            {
                return $"{Number(meant)} {test.Unit}, not {Number(value)}";
            }
        }

        return null;
    }

    private static double? Scale(string own, string? unit) =>
        (own, unit?.ToLowerInvariant()) switch
        {
            ("m", "cm") => 0.01,
            ("m", "mm") => 0.001,
            ("s", "ms") => 0.001,
            ("deg", "degrees" or "°") => 1,
            _ => null,
        };

    private static string Number(double value) => value.ToString("0.####", CultureInfo.InvariantCulture);
}
