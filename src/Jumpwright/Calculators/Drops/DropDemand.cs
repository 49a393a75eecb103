using System.Collections.Immutable;
using Jumpwright.Quantities;

namespace Jumpwright.Calculators.Drops;

/// <summary>Speed and energy at contact.</summary>
/// <param name="Basis">Formula, sources, dispute.</param>
/// <param name="Values"><c>touch_down_speed_m_s</c>, <c>energy_J</c>, <c>energy_J_kg</c>, <c>expected_drop_height_m</c>.</param>
/// <param name="Sentence">In plain words.</param>
public sealed record DropDemand(Basis Basis, ImmutableArray<Measure> Values, Sentence Sentence)
    : Calculation(Basis, Values, Sentence);
