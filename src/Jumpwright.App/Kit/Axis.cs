using Jumpwright.App.Wording;
using Jumpwright.Quantities;
using static Jumpwright.App.Wording.TextBook;

namespace Jumpwright.App.Kit;

/// <summary>An axis of a curve: what it is of, and its unit, which its reader may have in inches or pounds.</summary>
/// <param name="Of">Key of its name.</param>
/// <param name="Unit">Metric unit of the values that are given; empty where it has none.</param>
internal sealed record Axis(string Of, string Unit = "")
{
    /// <summary>Beside the axis, for example <c>height, in</c>.</summary>
    public string Label => Unit.Length == 0 ? T[Of] : $"{T[Of]}, {UnitWords.Word(UnitWords.Unit(Unit))}";

    /// <summary>A value as its reader has it.</summary>
    public double Shown(double value) =>
        (Speech.Now.Units, Unit) switch
        {
            (UnitSystem.InchPound, "m") => Customary.InchesOf(value),
            (UnitSystem.InchPound, "kg") => Customary.PoundsOf(value),
            _ => value,
        };
}
