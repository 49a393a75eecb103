using System.Collections.Immutable;

namespace Jumpwright.Calculators.Curves;

/// <summary>Loaded jumps of one kind.</summary>
/// <param name="Measure">What stands in the values.</param>
/// <param name="BodyMassKg">Body mass, kg.</param>
/// <param name="Jumps">Single trials: load and value.</param>
/// <param name="FromValue">Lower end of the wished range of height or velocity; null for power.</param>
/// <param name="ToValue">Upper end.</param>
/// <param name="LimitKg">The heaviest load that limits allow, kg; null when none is in force.</param>
public sealed record LoadCurveInput(
    LoadMeasure Measure,
    double BodyMassKg,
    ImmutableArray<LoadedJump> Jumps,
    double? FromValue = null,
    double? ToValue = null,
    double? LimitKg = null
)
{
    /// <summary>The heaviest that a further test may be done with, kg; null: as heavy as the curve is drawn.</summary>
    public double? MostTestKg { get; init; }

    /// <summary>The lightest that it may be done with, kg: the bar itself; null: any.</summary>
    public double? LeastTestKg { get; init; }
}
