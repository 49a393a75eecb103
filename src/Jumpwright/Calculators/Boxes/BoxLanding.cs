using System.Collections.Immutable;
using Jumpwright.Mechanics;
using Jumpwright.Quantities;

namespace Jumpwright.Calculators.Boxes;

/// <summary>What a box asks, and the highest to be proposed.</summary>
/// <param name="Basis">Formula, sources, dispute.</param>
/// <param name="Values">
/// <c>box_ceiling_m</c>, <c>box_proposed_m</c>, <c>real_rise_m</c>, and for the box asked about <c>landing_knee_deg</c>,
/// <c>landing_hip_deg</c>, <c>landing_energy_J</c>, <c>landing_speed_m_s</c>, <c>demand_removed_pct</c>, <c>folding_m</c>.
/// </param>
/// <param name="Sentence">In plain words.</param>
/// <param name="CeilingM">Highest box that can be landed on no deeper than a half squat, less 2u and clearance, m.</param>
/// <param name="ProposedM">A step lower, in whole 5 cm; null when that is no box.</param>
/// <param name="Posture">Landing posture on the box asked about; null when none was asked about.</param>
/// <param name="PaddedEdge">True when the box asked about needs a padded or folding edge.</param>
public sealed record BoxLanding(
    Basis Basis,
    ImmutableArray<Measure> Values,
    Sentence Sentence,
    double CeilingM,
    double? ProposedM,
    LinkPosture? Posture,
    bool PaddedEdge
) : Calculation(Basis, Values, Sentence);
