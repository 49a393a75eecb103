namespace Jumpwright.Calculators.Demands;

/// <summary>What an exercise asks, as measured in groups or in this athlete.</summary>
/// <param name="PeakBw">Peak ground force of both feet, body weights; null when only the tendon is asked about.</param>
/// <param name="PatellarIndex">Patellar tendon loading index, 0 to 1; null when only the ground force is asked about.</param>
/// <param name="JumpLandingBw">Peak of landing from a vertical jump to compare with, body weights; the published mean by itself.</param>
public sealed record DemandInput(double? PeakBw, double? PatellarIndex, double JumpLandingBw = 3.34);
