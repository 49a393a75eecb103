using System.Collections.Immutable;
using Jumpwright.Mechanics;
using Jumpwright.Quantities;

namespace Jumpwright.Calculators.Landings;

/// <summary>Force and loading of a landing, from this athlete's own spring and damper.</summary>
/// <param name="Basis">Formula, sources, dispute.</param>
/// <param name="Values"><c>peak_landing_force_N</c>, <c>peak_landing_force_BW</c>, <c>peak_loading_rate_N_s</c>, <c>leg_spring_N_m</c>.</param>
/// <param name="Sentence">In plain words.</param>
/// <param name="Model">The fitted model.</param>
/// <param name="RelativeMiss">Standard deviation of what the model misses on the athlete's own landings, of the force.</param>
public sealed record LandingForce(
    Basis Basis,
    ImmutableArray<Measure> Values,
    Sentence Sentence,
    SpringDamper Model,
    double RelativeMiss
) : Calculation(Basis, Values, Sentence);
