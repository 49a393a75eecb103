using System.Collections.Immutable;
using Jumpwright.Quantities;
using Jumpwright.Statistics;

namespace Jumpwright.Calculators.Curves;

/// <summary>A load–velocity line with the maximum it points to.</summary>
/// <param name="Basis">Formula, sources, dispute.</param>
/// <param name="Values"><c>estimated_maximum_kg</c>, <c>load_at_zero_velocity_kg</c>, <c>slope_m_s_kg</c>.</param>
/// <param name="Sentence">In plain words.</param>
/// <param name="Line">Velocity over load.</param>
public sealed record LoadVelocity(Basis Basis, ImmutableArray<Measure> Values, Sentence Sentence, StraightLine Line)
    : Calculation(Basis, Values, Sentence)
{
    /// <summary>The load whose lifts would narrow it most, kg, at most 110 % of the heaviest; null when settled.</summary>
    public double? NextLoadKg { get; init; }
}
