namespace Jumpwright.Quantities;

/// <summary>A length and its doubt in a sentence, as exactly as the doubt lets it be in the unit of whoever reads it.</summary>
/// <param name="Metres">m</param>
/// <param name="Doubt">One standard uncertainty, m.</param>
public readonly record struct DoubtedLength(double Metres, double Doubt)
{
    /// <summary>For example <c>35.7 ± 1.3 cm</c> or <c>14.1 ± 0.5 in</c>.</summary>
    public string ToString(UnitSystem units) =>
        units == UnitSystem.InchPound
            ? Doubted.Number(Customary.InchesOf(Metres), Customary.InchesOf(Doubt)) + " in"
            : Doubted.Number(100 * Metres, 100 * Doubt) + " cm";

    public override string ToString() => ToString(UnitSystem.Metric);
}
