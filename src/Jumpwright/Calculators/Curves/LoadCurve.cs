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
    Sentence Sentence,
    double FromKg,
    double ToKg,
    ImmutableArray<CurveSample> Curve
) : Calculation(Basis, Values, Sentence)
{
    /// <summary>The load whose test would sharpen it most, kg, inside bound and limit; null when settled or when no load is allowed.</summary>
    public double? NextLoadKg { get; init; }

    /// <summary>Whether no further test is needed; where it is, but no load is allowed, <see cref="NextLoadKg"/> is null too.</summary>
    public bool IsSettled { get; init; }

    /// <summary>Share of today's doubt that is expected to be left after that test; null when settled.</summary>
    public double? DoubtLeft { get; init; }
}
