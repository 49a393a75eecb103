using System.Globalization;
using Jumpwright.Quantities;

namespace Jumpwright.App.Wording;

/// <summary>
/// Lengths and masses as they are typed: in inches and pounds where these are chosen, kept in metres and kilograms. A value is told
/// from another down to a thousandth of a millimetre and a hundredth of a gram, far below any tape or scale, and the shortest decimal
/// within that is taken; so what was typed in one unit, shown in the other and typed again is the same, and nothing drifts.
/// </summary>
internal static class TypedAmount
{
    /// <summary>The field of a form that says in which units it was shown; without it, what is typed is metric.</summary>
    public const string Field = "units";

    private const int MostDecimals = 12;

    /// <summary>The units that a form was shown in, as its own field says.</summary>
    public static UnitSystem UnitsOf(string? field) =>
        field == nameof(UnitSystem.InchPound) ? UnitSystem.InchPound : UnitSystem.Metric;

    /// <summary>The unit that stands beside such a field, for example <c>in</c> for <c>m</c>.</summary>
    public static string Unit(string unit, UnitSystem units) =>
        (units, unit) switch
        {
            (UnitSystem.InchPound, "m" or "cm") => "in",
            (UnitSystem.InchPound, "kg") => "lb",
            _ => unit,
        };

    /// <summary>
    /// What was typed, written in other units; words, and what is no number, stay as they are typed, so that whoever reads the field
    /// says what is wrong with it. A decimal comma is read.
    /// </summary>
    /// <param name="typed">A number, in the unit of the field.</param>
    /// <param name="unit">The metric unit: <c>m</c>, <c>cm</c> or <c>kg</c>; any other is the same in all units.</param>
    /// <param name="from">The units it was typed in.</param>
    /// <param name="to">The units it is wished in.</param>
    public static string In(string typed, string unit, UnitSystem from, UnitSystem to)
    {
        if (from == to || Told(unit) is not var (size, apart) || Read(typed) is not { } value)
        {
            return typed;
        }

        // Exact arithmetic, and the difference always taken in metric units: there and back ask the same question.
        bool toInches = to == UnitSystem.InchPound;
        decimal exact = toInches ? value / size : value * size;
        for (int decimals = 0; decimals <= MostDecimals; decimals++)
        {
            decimal rounded = Math.Round(exact, decimals);
            if (Math.Abs(toInches ? (rounded * size) - value : rounded - exact) <= apart)
            {
                return rounded.ToString("0.############", CultureInfo.InvariantCulture);
            }
        }

        return exact.ToString(CultureInfo.InvariantCulture);
    }

    /// <summary>What was typed, in its metric unit and with a decimal point, as files write it.</summary>
    /// <param name="typed">A number, in the unit of the field.</param>
    /// <param name="unit">The metric unit.</param>
    /// <param name="from">The units it was typed in.</param>
    public static string Metric(string typed, string unit, UnitSystem from) =>
        In(typed, unit, from, UnitSystem.Metric).Replace(',', '.');

    /// <summary>What is stored, to stand in a field.</summary>
    /// <param name="value">In the metric unit; null leaves the field empty.</param>
    /// <param name="unit">The metric unit.</param>
    /// <param name="to">The units of the reader.</param>
    public static string Of(double? value, string unit, UnitSystem to) =>
        value is { } known ? In(known.ToString("R", CultureInfo.InvariantCulture), unit, UnitSystem.Metric, to) : "";

    /// <summary>A value to begin with, as somebody would type it: tenths of an inch, whole pounds from ten on.</summary>
    public static string Round(string metric, string unit, UnitSystem to)
    {
        string said = In(metric, unit, UnitSystem.Metric, to);
        if (said == metric)
        {
            return metric;
        }

        decimal value = decimal.Parse(said, CultureInfo.InvariantCulture);
        return Math.Round(value, unit == "kg" && value >= 10 ? 0 : 1).ToString("0.#", CultureInfo.InvariantCulture);
    }

    /// <summary>How many of the metric unit one inch or pound is, and below which difference two values are one; null: a unit that all read.</summary>
    private static (decimal Size, decimal Apart)? Told(string unit) =>
        unit switch
        {
            "m" => (0.0254m, 0.000_001m),
            "cm" => (2.54m, 0.000_1m),
            "kg" => (0.45359237m, 0.000_01m),
            _ => null,
        };

    /// <summary>What nobody could mean, thousands of kilometres among them, is no number here.</summary>
    private static decimal? Read(string typed) =>
        decimal.TryParse(
            typed.Trim().Replace(',', '.'),
            NumberStyles.Float,
            CultureInfo.InvariantCulture,
            out decimal value
        )
        && Math.Abs(value) <= 1_000_000_000
            ? value
            : null;
}
