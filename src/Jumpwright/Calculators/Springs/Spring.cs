using System.Collections.Immutable;
using Jumpwright.Quantities;

namespace Jumpwright.Calculators.Springs;

/// <summary>Stiffness and the indices of rebound, each under its own name.</summary>
/// <param name="Basis">Formula, sources, dispute.</param>
/// <param name="Values">
/// <c>reactive_strength_index</c>, <c>flight_contact_ratio</c>, where the model holds <c>vertical_stiffness_time_model_N_m</c> and
/// per kg, from force <c>vertical_stiffness_N_m</c>, and <c>reactive_strength_index_modified</c> where a time to take-off was given.
/// </param>
/// <param name="Sentence">In plain words.</param>
/// <param name="ModelHolds">Whether the contact lies in the band of the half-sine model.</param>
public sealed record Spring(Basis Basis, ImmutableArray<Measure> Values, Sentence Sentence, bool ModelHolds)
    : Calculation(Basis, Values, Sentence);
