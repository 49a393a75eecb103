namespace Jumpwright.Trials;

/// <summary>Instants on the recording's own clock, s. Those that do not apply are null.</summary>
/// <param name="OnsetS">First instant of the jump's movement.</param>
/// <param name="PeakDownwardVelocityS">End of unweighting, start of braking.</param>
/// <param name="BottomS">Lowest point of the centre of mass (velocity zero).</param>
/// <param name="TakeOffS">Last contact before flight.</param>
/// <param name="TouchDownS">First contact after flight.</param>
/// <param name="FirstTouchDownS">Drop jump: contact after the fall from the box.</param>
/// <param name="StableS">End of the time to stabilisation.</param>
public sealed record TrialEvents(
    double? OnsetS = null,
    double? PeakDownwardVelocityS = null,
    double? BottomS = null,
    double? TakeOffS = null,
    double? TouchDownS = null,
    double? FirstTouchDownS = null,
    double? StableS = null
);
