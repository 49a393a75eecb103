using System.Collections.Immutable;
using Jumpwright.Quantities;

namespace Jumpwright.Calculators.Responses;

/// <summary>What the two-component model says of a day.</summary>
/// <param name="Basis">Formula, sources, dispute.</param>
/// <param name="Values"><c>modelled_response</c>, <c>peak_after_one_load_d</c>.</param>
/// <param name="Sentence">In plain words.</param>
public sealed record TrainingResponse(Basis Basis, ImmutableArray<Measure> Values, Sentence Sentence)
    : Calculation(Basis, Values, Sentence);
