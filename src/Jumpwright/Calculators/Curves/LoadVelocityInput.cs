using System.Collections.Immutable;

namespace Jumpwright.Calculators.Curves;

/// <summary>Submaximal lifts moved as fast as possible.</summary>
/// <param name="Lifts">Load, kg, and mean velocity, m/s, of each.</param>
/// <param name="VelocityAtMaximumMS">Mean velocity at the maximum of this lift, m/s.</param>
/// <param name="VelocityAtMaximumUncertaintyMS">How far athletes differ in that, m/s.</param>
/// <param name="LiftIsSquat">True for the full squat, for which the velocity at the maximum is published.</param>
public sealed record LoadVelocityInput(
    ImmutableArray<LoadedJump> Lifts,
    double VelocityAtMaximumMS = 0.32,
    double VelocityAtMaximumUncertaintyMS = 0.03,
    bool LiftIsSquat = true
);
