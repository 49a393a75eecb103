using System.Collections.Immutable;
using Jumpwright.Quantities;
using NodaTime;

namespace Jumpwright.Athletes;

/// <summary>What limits an athlete, as far as it is known on that day.</summary>
/// <param name="AthleteId">Whose.</param>
/// <param name="AsOf">Day.</param>
/// <param name="Findings">One for each quality, the most limiting first.</param>
/// <param name="Summary">One sentence: what limits them and how sure that is, or which test would settle it.</param>
/// <param name="Current">
/// The measures that decisions take, one for each name, task and limb, pooled over the athlete's own repeated trials: the
/// doubt holds the device's and the athlete's own trial-to-trial error. The ladder judges entry criteria from these; what
/// stands here without its task opens nothing.
/// </param>
public sealed record Profile(
    string AthleteId,
    LocalDate AsOf,
    ImmutableArray<Finding> Findings,
    Sentence Summary,
    ImmutableArray<Evidence> Current
);
