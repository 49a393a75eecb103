namespace Jumpwright.Quantities;

/// <summary>A length in a sentence, written in the units of whoever reads it.</summary>
/// <param name="Metres">m</param>
public readonly record struct Length(double Metres)
{
    /// <summary>With its unit, for example <c>46 cm</c> or <c>18.1 in</c>.</summary>
    /// <param name="format">Digits and unit in metres, for example <c>0 cm</c> or <c>0.00 m</c>; the unit in brackets writes the number alone.</param>
    /// <param name="units">In which units it is read.</param>
    public string ToString(string? format, UnitSystem units)
    {
        SaidUnit said = SaidUnit.Of(format);
        return units == UnitSystem.InchPound
            // What is written to the millimetre is a measure: it keeps its tenth, as the doubt beside it has one.
            ? said is { Digits: "0.0", Unit: "cm" }
                ? said.Write(Math.Round(Customary.InchesOf(Metres), 1), "0.0", "in")
                : said.Write(Customary.InchesToWrite(Metres), "0.#", "in")
            : said.Write(
                said.Unit switch
                {
                    "m" => Metres,
                    "cm" => 100 * Metres,
                    "mm" => 1000 * Metres,
                    _ => throw new FormatException($"No length is written in '{said.Unit}'."),
                }
            );
    }
}
