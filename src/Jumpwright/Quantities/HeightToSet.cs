namespace Jumpwright.Quantities;

/// <summary>A height of a box that is set up, in a sentence: as the card has it, in inches to the tenth and never more than was planned.</summary>
/// <param name="Metres">Planned height, m.</param>
public readonly record struct HeightToSet(double Metres)
{
    /// <summary>For example <c>30 cm</c> or <c>11.8 in</c>.</summary>
    public string ToString(UnitSystem units) =>
        units == UnitSystem.InchPound
            ? FormattableString.Invariant($"{Customary.InchesToWrite(Metres):0.#} in")
            : FormattableString.Invariant($"{100 * Metres:0} cm");

    public override string ToString() => ToString(UnitSystem.Metric);
}
