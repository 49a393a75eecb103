using System.Collections.Immutable;

namespace Jumpwright.Calculators.Bounding;

/// <summary>How far above what was measured something may go.</summary>
/// <param name="Of">What is bounded.</param>
/// <param name="Measured">What was measured for the athlete: loads, kg, or run-up speeds, m/s.</param>
/// <param name="Asked">What is asked about, same unit; null asks for the bound only.</param>
public sealed record BoundInput(BoundOf Of, ImmutableArray<double> Measured, double? Asked = null);
