namespace Jumpwright.Recordings;

/// <summary>One ground contact and the flight after it, s. The first contact or the last flight may be unknown.</summary>
public readonly record struct ContactFlight(double? ContactS, double? FlightS);
