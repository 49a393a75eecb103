namespace Jumpwright.Calculators.Landings;

/// <summary>One measured drop landing of the athlete, on both feet.</summary>
/// <param name="DropM">Real drop, m.</param>
/// <param name="PeakForceN">Greatest landing force, N.</param>
/// <param name="LoadingRateNS">Steepest rise of force over 10 ms, N/s; null when not measured.</param>
public sealed record MeasuredLanding(double DropM, double PeakForceN, double? LoadingRateNS = null);
