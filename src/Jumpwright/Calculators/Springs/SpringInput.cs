namespace Jumpwright.Calculators.Springs;

/// <summary>A rebound: hop or drop jump.</summary>
/// <param name="BodyMassKg">Body mass, kg.</param>
/// <param name="ContactS">Contact time, s.</param>
/// <param name="FlightS">Flight time after it, s.</param>
/// <param name="TimeUncertaintyS">Standard uncertainty of either time, s.</param>
/// <param name="PeakForceN">Greatest force during contact, N, from a plate; null without one.</param>
/// <param name="FallM">Greatest fall of the centre of mass during contact, m, from a plate; null without one.</param>
/// <param name="TimeToTakeOffS">Countermovement jump: time to take-off, s, for the modified index; null otherwise.</param>
public sealed record SpringInput(
    double BodyMassKg,
    double ContactS,
    double FlightS,
    double TimeUncertaintyS = 0.002,
    double? PeakForceN = null,
    double? FallM = null,
    double? TimeToTakeOffS = null
);
