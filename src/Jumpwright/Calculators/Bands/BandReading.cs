namespace Jumpwright.Calculators.Bands;

/// <summary>One reading of a hand scale.</summary>
/// <param name="LengthM">Length of the band, m.</param>
/// <param name="ForceN">Pull, N (a scale in kg: times 9.81).</param>
public sealed record BandReading(double LengthM, double ForceN);
