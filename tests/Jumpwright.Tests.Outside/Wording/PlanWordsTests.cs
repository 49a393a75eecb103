using Jumpwright.App.Wording;
using Jumpwright.Plans;

namespace Jumpwright.Tests.Outside.Wording;

/// <summary>How good a plan is, as a coach reads it.</summary>
public class PlanWordsTests
{
    [Fact]
    public void WhatRoundingLeavesOpen_IsNoGap()
    {
        // Nearly all is locked: a point of rounding would be the whole of what is left to choose, a gap of 100 %.
        string said = PlanWords.Proof(Worth(13_710, 13_711, locked: 13_710));

        Assert.Contains("no plan is worth more than 13711.", said, StringComparison.Ordinal);
        Assert.DoesNotContain("gap", said, StringComparison.Ordinal);
    }

    [Fact]
    public void AGap_IsSaidAsAShareOfWhatThereIsToChoose() =>
        Assert.Contains("(gap 20 %)", PlanWords.Proof(Worth(900, 920, locked: 820)), StringComparison.Ordinal);

    private static Plan Worth(double points, double bound, double locked) =>
        new(PlanStatus.Feasible, points, bound, locked, (bound - points) / (bound - locked), 1, [], [], [], [], []);
}
