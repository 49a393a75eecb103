namespace Jumpwright.Mechanics;

/// <summary>A posture of <see cref="LegLinks"/>.</summary>
/// <param name="KneeDeg">Knee flexion, degrees; 0 is straight.</param>
/// <param name="HipDeg">Hip flexion, degrees: between trunk and thigh; 0 is straight.</param>
/// <param name="AnkleDeg">Ankle dorsiflexion, degrees.</param>
/// <param name="TrunkLeanDeg">Trunk forward from the vertical, degrees.</param>
/// <param name="CentreM">Centre of mass above the sole, m.</param>
/// <param name="HipM">Hip above the sole, m.</param>
/// <param name="Balanced">False when no lean brings the centre of mass above the middle of the foot.</param>
public sealed record LinkPosture(
    double KneeDeg,
    double HipDeg,
    double AnkleDeg,
    double TrunkLeanDeg,
    double CentreM,
    double HipM,
    bool Balanced
);
