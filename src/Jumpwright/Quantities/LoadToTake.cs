namespace Jumpwright.Quantities;

/// <summary>A load that is taken up, in a sentence: as the card has it, in pounds whole and never more than was planned.</summary>
/// <param name="Kilograms">Planned load, kg.</param>
public readonly record struct LoadToTake(double Kilograms)
{
    /// <summary>For example <c>17.5 kg</c> or <c>38 lb</c>.</summary>
    public string ToString(UnitSystem units) =>
        units == UnitSystem.InchPound
            ? FormattableString.Invariant($"{Customary.LoadToTakeLb(Kilograms):0} lb")
            : FormattableString.Invariant($"{Kilograms:0.#} kg");

    public override string ToString() => ToString(UnitSystem.Metric);
}
