using System.Collections.Immutable;
using Jumpwright.Quantities;

namespace Jumpwright.Calculators.Bounding;

/// <summary>A bound and whether what was asked about lies inside.</summary>
/// <param name="Basis">Formula, sources, dispute.</param>
/// <param name="Values"><c>bound</c>.</param>
/// <param name="Sentence">In plain words.</param>
public sealed record Bound(Basis Basis, ImmutableArray<Measure> Values, Sentence Sentence)
    : Calculation(Basis, Values, Sentence);
