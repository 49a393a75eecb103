namespace Jumpwright.Quantities;

/// <summary>
/// A named quantity with its doubt: value, unit, standard uncertainty and the method that gave it.
/// It is not a bare number and has no silent way to become one: ask <see cref="In"/>.
/// </summary>
/// <param name="Name">The contract's name, for example <c>jump_height_m</c>.</param>
/// <param name="Value">Finite, in <paramref name="Unit"/>.</param>
/// <param name="Unit">SI unit of value and uncertainty.</param>
/// <param name="StandardUncertainty">One standard deviation of what the value may differ from the truth; finite, not negative.</param>
/// <param name="Method">How it was got, for example <c>impulse-momentum</c>.</param>
public sealed record Measure(string Name, double Value, Unit Unit, double StandardUncertainty, string Method)
{
    public double Value { get; } =
        double.IsFinite(Value) ? Value : throw new ArgumentOutOfRangeException(nameof(Value), Name + " is not finite.");

    public double StandardUncertainty { get; } =
        double.IsFinite(StandardUncertainty) && StandardUncertainty >= 0
            ? StandardUncertainty
            : throw new ArgumentOutOfRangeException(nameof(StandardUncertainty), Name + " has no usable doubt.");

    /// <summary>The value, given that the caller names the unit it expects.</summary>
    /// <exception cref="InvalidOperationException">The measure is in another unit.</exception>
    public double In(Unit unit) =>
        unit == Unit ? Value : throw new InvalidOperationException($"{Name} is in {Unit}, not in {unit}.");
}
