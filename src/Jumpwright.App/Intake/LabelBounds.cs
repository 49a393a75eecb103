using System.Globalization;
using NodaTime;
using NodaTime.Text;

namespace Jumpwright.App.Intake;

/// <summary>What a label written on a page can't be: a slip of the pen is caught before it stands in a file (house bounds).</summary>
internal static class LabelBounds
{
    /// <summary>Each number with its bounds, in its metric unit, and the sentence that says them.</summary>
    private static readonly (string Cell, double Least, double Most, string Key)[] Numbers =
    [
        ("drop_height_m", 0.02, 1.5, "import.drop.wrong"),
        ("body_mass_kg", 15, 300, "import.mass.wrong"),
        ("external_load_kg", 0, 500, "import.load.wrong"),
    ];

    /// <summary>The text book's key of what is wrong; null where nothing is.</summary>
    /// <param name="cells">By the names of trials.csv, metric; empty where nothing was written.</param>
    /// <param name="today">The day on which they are written.</param>
    public static string? Wrong(IReadOnlyDictionary<string, string> cells, LocalDate today)
    {
        if (
            cells.GetValueOrDefault("date", "") is { Length: > 0 } date
            && !(LocalDatePattern.Iso.Parse(date) is { Success: true, Value: var day } && day <= today)
        )
        {
            return "import.day.wrong";
        }

        foreach ((string cell, double least, double most, string key) in Numbers)
        {
            if (
                cells.GetValueOrDefault(cell, "") is { Length: > 0 } typed
                && !(
                    double.TryParse(typed, NumberStyles.Float, CultureInfo.InvariantCulture, out double value)
                    && value >= least
                    && value <= most
                )
            )
            {
                return key;
            }
        }

        return null;
    }
}
