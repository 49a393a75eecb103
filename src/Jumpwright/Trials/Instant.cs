namespace Jumpwright.Trials;

/// <summary>An instant between samples with its doubt.</summary>
/// <param name="Sample">Sample index, fractional.</param>
/// <param name="UncertaintyS">Standard uncertainty, s.</param>
/// <param name="Unsettled">True where a ringing plate or noise hides it: nothing that rests on it may be decided from.</param>
internal readonly record struct Instant(double Sample, double UncertaintyS, bool Unsettled = false);
