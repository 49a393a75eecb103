using System.Collections.Immutable;
using Jumpwright.Quantities;

namespace Jumpwright.Calculators.Boxes;

/// <summary>What a start from a seat or a foot on a box asks.</summary>
/// <param name="Basis">Formula, sources, dispute.</param>
/// <param name="Values">
/// <c>start_height_for_90_m</c>, and for the height asked about <c>start_hip_deg</c>, <c>start_knee_deg</c>,
/// <c>hip_rise_to_standing_m</c>, <c>lift_energy_J</c>.
/// </param>
/// <param name="Sentence">In plain words.</param>
/// <param name="HipsNear90">Whether the hips start between 80 and 100°; null when no height was asked about.</param>
public sealed record HighStartPosture(Basis Basis, ImmutableArray<Measure> Values, Sentence Sentence, bool? HipsNear90)
    : Calculation(Basis, Values, Sentence);
