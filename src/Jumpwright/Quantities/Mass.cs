namespace Jumpwright.Quantities;

/// <summary>A mass in a sentence, written in the units of whoever reads it.</summary>
/// <param name="Kilograms">kg</param>
public readonly record struct Mass(double Kilograms)
{
    /// <summary>With its unit, for example <c>66.5 kg</c> or <c>146.6 lb</c>.</summary>
    /// <param name="format">Digits and unit, for example <c>0.# kg</c>; the unit in brackets writes the number alone.</param>
    /// <param name="units">In which units it is read.</param>
    public string ToString(string? format, UnitSystem units)
    {
        SaidUnit said = SaidUnit.Of(format);
        return said.Unit != "kg" ? throw new FormatException($"No mass is written in '{said.Unit}'.")
            : units == UnitSystem.InchPound ? said.Write(Math.Round(Customary.PoundsOf(Kilograms), 1), "0.#", "lb")
            : said.Write(Kilograms);
    }
}
