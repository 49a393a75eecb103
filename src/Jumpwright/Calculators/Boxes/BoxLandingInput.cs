namespace Jumpwright.Calculators.Boxes;

/// <summary>Jumping onto a box.</summary>
/// <param name="StatureM">Stature, m.</param>
/// <param name="BodyMassKg">Body mass, kg.</param>
/// <param name="JumpHeightM">Rise of the centre of mass after take-off in a jump from the floor, m (mean).</param>
/// <param name="JumpHeightUncertaintyM">Its standard uncertainty with the athlete's own trial-to-trial error, m.</param>
/// <param name="BoxHeightM">The box asked about, m; null asks for the ceiling only.</param>
/// <param name="HipHeightM">Floor to trochanter, m, where it was measured.</param>
/// <param name="Female">Which of the segment tables stands beside Dempster's; null uses the men's.</param>
public sealed record BoxLandingInput(
    double StatureM,
    double BodyMassKg,
    double JumpHeightM,
    double JumpHeightUncertaintyM,
    double? BoxHeightM = null,
    double? HipHeightM = null,
    bool? Female = null
);
