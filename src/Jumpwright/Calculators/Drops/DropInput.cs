using System.Collections.Immutable;

namespace Jumpwright.Calculators.Drops;

/// <summary>A drop from a box.</summary>
/// <param name="BoxHeightM">Nominal height stepped from, m.</param>
/// <param name="BodyMassKg">Body mass, kg.</param>
/// <param name="Start">How they leave the box.</param>
/// <param name="RealShares">This athlete's measured drops over the box's height, as fractions; empty when none.</param>
/// <param name="JumpHeightM">Their own jump height, m, to compare with; null when not known.</param>
public sealed record DropInput(
    double BoxHeightM,
    double BodyMassKg,
    DropStart Start,
    ImmutableArray<double> RealShares,
    double? JumpHeightM = null
);
