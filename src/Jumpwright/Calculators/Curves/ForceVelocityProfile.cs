using System.Collections.Immutable;
using Jumpwright.Mechanics;
using Jumpwright.Quantities;
using Jumpwright.Statistics;

namespace Jumpwright.Calculators.Curves;

/// <summary>A force–velocity profile. It describes; it never picks exercises alone.</summary>
/// <param name="Basis">Formula, sources, dispute.</param>
/// <param name="Values">
/// <c>force_at_zero_velocity_N_kg</c>, <c>velocity_at_zero_force_m_s</c>, <c>greatest_power_W_kg</c>, <c>slope_of_optimal_pct</c>,
/// <c>height_now_m</c>, <c>height_at_optimum_m</c>, <c>height_left_m</c>.
/// </param>
/// <param name="Sentence">In plain words.</param>
/// <param name="Line">The line.</param>
/// <param name="Fit">The regression behind it.</param>
/// <param name="OptimalSlope">By the closed form, N·s/m/kg.</param>
/// <param name="OptimalSlopeBySearch">By direct search.</param>
public sealed record ForceVelocityProfile(
    Basis Basis,
    ImmutableArray<Measure> Values,
    Sentence Sentence,
    ForceVelocityLine Line,
    StraightLine Fit,
    double OptimalSlope,
    double OptimalSlopeBySearch
) : Calculation(Basis, Values, Sentence);
