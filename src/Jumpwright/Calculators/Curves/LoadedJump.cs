namespace Jumpwright.Calculators.Curves;

/// <summary>A loaded jump or lift.</summary>
/// <param name="LoadKg">Load, kg.</param>
/// <param name="Value">Height, m; mean velocity, m/s; or power, W.</param>
public sealed record LoadedJump(double LoadKg, double Value);
