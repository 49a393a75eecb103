using System.Collections.Immutable;
using Jumpwright.Quantities;

namespace Jumpwright.Calculators.Curves;

/// <summary>The height to train depth jumps from, and what is still open.</summary>
/// <param name="Basis">Formula, sources, dispute.</param>
/// <param name="Values"><c>chosen_drop_m</c>, <c>best_drop_m</c>, <c>index_at_chosen</c>, <c>contact_at_chosen_s</c>, <c>chance_within_3_pct</c>.</param>
/// <param name="Sentence">In plain words.</param>
/// <param name="ChosenM">Height to train from, m.</param>
/// <param name="ChanceWithin">Probability that the chosen height loses at most 3 % of the best index.</param>
/// <param name="NextDropM">The height whose test would sharpen it most, m; null when settled.</param>
/// <param name="DoubtLeft">What the choice is expected to lose after that test, as a share of today's; null when settled.</param>
/// <param name="Curve">For drawing.</param>
public sealed record DropCurve(
    Basis Basis,
    ImmutableArray<Measure> Values,
    Sentence Sentence,
    double ChosenM,
    double ChanceWithin,
    double? NextDropM,
    double? DoubtLeft,
    ImmutableArray<CurveSample> Curve
) : Calculation(Basis, Values, Sentence)
{
    /// <summary>Contact is over its ceiling at every height that limits allow: none is trained from.</summary>
    public bool AllTooSlow { get; init; }
}
