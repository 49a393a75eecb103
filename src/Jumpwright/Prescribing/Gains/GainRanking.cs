using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Quantities;

namespace Jumpwright.Prescribing.Gains;

/// <summary>Conditions first, then what each quality would bring.</summary>
/// <param name="AthleteId">Whose.</param>
/// <param name="Outcome">What they train for.</param>
/// <param name="Conditions">Qualities that guard health and are not ranked: sentences.</param>
/// <param name="Ranked">Qualities with a published effect on that outcome: what limits, what may, what does not, of each the largest first.</param>
/// <param name="Unranked">The others, in words.</param>
/// <param name="Settled">Whether it is known what comes first: something limits, or the first is told from the second of its standing.</param>
/// <param name="ChanceFirst">Probability that the first brings more than the second; null with fewer than two.</param>
/// <param name="NextTest">The test that would settle it, or null.</param>
/// <param name="Sentence">In plain words.</param>
public sealed record GainRanking(
    string AthleteId,
    ChosenOutcome Outcome,
    ImmutableArray<Sentence> Conditions,
    ImmutableArray<Gain> Ranked,
    ImmutableArray<Gain> Unranked,
    bool Settled,
    double? ChanceFirst,
    Sentence? NextTest,
    Sentence Sentence
)
{
    /// <summary>The quality whose test would settle it; null where none would.</summary>
    public Quality? Next { get; init; }

    /// <summary>True where <see cref="NextTest"/> says why that test waits on the day.</summary>
    public bool TestWaits { get; init; }

    /// <summary>Which test would tell more where the ranking isn't settled, that it waits, or that none would; null where it is settled.</summary>
    public Sentence? WhatSettles =>
        Settled ? null
        : TestWaits && NextTest is { } waits
            ? Quantities.Sentence.Of($"The test that would help to settle it waits ({waits:open}).")
        : NextTest is { } test ? Quantities.Sentence.Of($"Would help to settle it: {test:small open}.")
        : Quantities.Sentence.Of($"No test of this athlete settles it: the doubt lies in the published effects.");
}
