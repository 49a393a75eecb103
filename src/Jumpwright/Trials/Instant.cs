namespace Jumpwright.Trials;

/// <summary>An instant between samples with its doubt.</summary>
/// <param name="Sample">Sample index, fractional.</param>
/// <param name="UncertaintyS">Standard uncertainty, s.</param>
internal readonly record struct Instant(double Sample, double UncertaintyS);
