using System.Collections.Immutable;
using Jumpwright.Quantities;
using NodaTime;

namespace Jumpwright.Athletes;

/// <summary>What limits an athlete, as far as it is known on that day.</summary>
/// <param name="AthleteId">Whose.</param>
/// <param name="AsOf">Day.</param>
/// <param name="Findings">One for each quality, the most limiting first.</param>
/// <param name="Known">How high they jump, what limits them and how sure that is, as far as it is known.</param>
/// <param name="Current">
/// The measures that decisions take, one for each name, task and limb, pooled over the athlete's own repeated trials: the
/// doubt holds the device's and the athlete's own trial-to-trial error. The ladder judges entry criteria from these; what
/// stands here without its task opens nothing.
/// </param>
public sealed record Profile(
    string AthleteId,
    LocalDate AsOf,
    ImmutableArray<Finding> Findings,
    Sentence Known,
    ImmutableArray<Evidence> Current
)
{
    /// <summary>The one test that is named beside what is known, because it comes first or would settle it; null where none is.</summary>
    public NamedTest? Test { get; init; }

    /// <summary>What is known, and the test.</summary>
    public Sentence Summary => Test is { } test ? Sentence.Join(" ", [Known, test.Said]) : Known;
}
