namespace Jumpwright.Trials;

/// <summary>One complete contact of a series and the flight that follows.</summary>
/// <param name="ContactS">Contact time, s.</param>
/// <param name="FlightS">Flight time after it, s.</param>
/// <param name="ReactiveStrengthIndex">Flight-time height over contact time, m/s.</param>
public sealed record HopContact(double ContactS, double FlightS, double ReactiveStrengthIndex);
