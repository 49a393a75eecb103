using System.Collections.Immutable;
using Jumpwright.Quantities;

namespace Jumpwright.Calculators.Demands;

/// <summary>How an exercise compares.</summary>
/// <param name="Basis">Formula, sources, dispute.</param>
/// <param name="Values"><c>relative_ground_force</c>, <c>patellar_tier</c>.</param>
/// <param name="Sentence">In plain words.</param>
public sealed record Demand(Basis Basis, ImmutableArray<Measure> Values, Sentence Sentence)
    : Calculation(Basis, Values, Sentence);
