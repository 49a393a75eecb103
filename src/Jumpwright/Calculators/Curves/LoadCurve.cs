using System.Collections.Immutable;
using Jumpwright.Quantities;

namespace Jumpwright.Calculators.Curves;

/// <summary>A range of loads for what is wished.</summary>
/// <param name="Basis">Formula, sources, dispute.</param>
/// <param name="Values"><c>load_from_kg</c>, <c>load_to_kg</c>, and for power <c>best_load_kg</c>.</param>
/// <param name="Sentence">In plain words; metres per second, no named bands.</param>
/// <param name="FromKg">Lighter end, kg.</param>
/// <param name="ToKg">Heavier end, kg.</param>
/// <param name="Curve">For drawing.</param>
public sealed record LoadCurve(
    Basis Basis,
    ImmutableArray<Measure> Values,
    string Sentence,
    double FromKg,
    double ToKg,
    ImmutableArray<CurveSample> Curve
) : Calculation(Basis, Values, Sentence)
{
    /// <summary>The load whose test would sharpen it most, kg, inside bound and limit; null when settled.</summary>
    public double? NextLoadKg { get; init; }
}
