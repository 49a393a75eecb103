using System.Collections.Immutable;
using Jumpwright.Quantities;

namespace Jumpwright.Calculators.Deciding;

/// <summary>How many more trials would settle a decision.</summary>
/// <param name="Basis">Formula, sources, dispute.</param>
/// <param name="Values"><c>certainty_now</c>, <c>more_trials</c>, <c>certainty_then</c>.</param>
/// <param name="Sentence">In plain words.</param>
/// <param name="More">How many more; 0 when settled; null when no number of trials settles it.</param>
public sealed record MoreTrials(Basis Basis, ImmutableArray<Measure> Values, Sentence Sentence, int? More)
    : Calculation(Basis, Values, Sentence);
