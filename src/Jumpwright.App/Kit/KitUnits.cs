using Jumpwright.App.Wording;
using Jumpwright.Quantities;

namespace Jumpwright.App.Kit;

/// <summary>The units of a calculator's fields: what stands beside each, and what was typed in one written in the other.</summary>
internal static class KitUnits
{
    private const string LoadOrSpeed = "kg or m/s";

    /// <summary>What stands beside the field, for example <c>lb:in</c>; empty where it has no unit.</summary>
    public static string Beside(KitField field, UnitSystem units) =>
        string.Join(':', field.Unit.Split(':').Select(u => UnitWords.Word(Said(u, units))));

    /// <summary>What was typed into a field, written in other units.</summary>
    /// <param name="field">The field.</param>
    /// <param name="typed">What stands in every field, by name: what is asked about may decide the unit.</param>
    /// <param name="from">The units it was typed in.</param>
    /// <param name="to">The units it is wished in.</param>
    public static string In(KitField field, Func<string, string> typed, UnitSystem from, UnitSystem to)
    {
        string text = typed(field.Name);
        if (from == to || field.Unit.Length == 0)
        {
            return text;
        }

        string[] units =
        [
            .. field
                .Unit.Split(':')
                .Select(u =>
                    u != LoadOrSpeed ? u
                    : typed("of") == "load" ? "kg"
                    : "m/s"
                ),
        ];
        return field.IsList
            ? KitPairs.With(
                text,
                a => TypedAmount.In(a, units[0], from, to),
                b => TypedAmount.In(b, units[1], from, to)
            )
            : TypedAmount.In(text, units[0], from, to);
    }

    /// <summary>What stands in a field at first, as somebody would type it in these units.</summary>
    public static string Start(KitField field, UnitSystem units)
    {
        string[] of = [.. field.Unit.Split(':').Select(u => u == LoadOrSpeed ? "kg" : u)];
        return units == UnitSystem.Metric || field.Start.Length == 0 ? field.Start
            : field.IsList
                ? KitPairs.With(
                    field.Start,
                    a => TypedAmount.Round(a, of[0], units),
                    b => TypedAmount.Round(b, of[1], units)
                )
            : TypedAmount.Round(field.Start, of[0], units);
    }

    private static string Said(string unit, UnitSystem units) =>
        unit == LoadOrSpeed && units == UnitSystem.InchPound ? "lb or m/s" : TypedAmount.Unit(unit, units);
}
