using System.Collections.Immutable;

namespace Jumpwright.Calculators.Curves;

/// <summary>Squat jumps with added loads.</summary>
/// <param name="BodyMassKg">Body mass, kg.</param>
/// <param name="PushOffM">Push-off distance, m: extended leg to the toes less the start height.</param>
/// <param name="Jumps">Load, kg, and height, m, of each.</param>
/// <param name="PushOffUncertaintyM">Standard uncertainty of the distance, m.</param>
/// <param name="SquatJumps">False when the heights are of countermovement jumps: refused.</param>
public sealed record ForceVelocityInput(
    double BodyMassKg,
    double PushOffM,
    ImmutableArray<LoadedJump> Jumps,
    double PushOffUncertaintyM = 0.01,
    bool SquatJumps = true
);
