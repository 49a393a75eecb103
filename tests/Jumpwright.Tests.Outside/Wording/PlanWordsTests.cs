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

        Assert.Equal(
            "Every hard limit is kept. No plan within the limits would be better by anything that could be told.",
            said
        );
    }

    /// <summary>Points are of no use to a coach: what could still be gained is a part of what this plan gives beyond what is locked.</summary>
    [Fact]
    public void AGap_IsHowMuchBetterAPlanCouldBe_AndNeverRoundedDown()
    {
        Assert.EndsWith(
            "can be better than this one by more than 25 %.",
            PlanWords.Proof(Worth(900, 920, locked: 820)),
            StringComparison.Ordinal
        );
        Assert.EndsWith("by more than 1.5 %.", PlanWords.Proof(Worth(4010, 4068, locked: 0)), StringComparison.Ordinal);
    }

    [Fact]
    public void NothingBeyondWhatIsLocked_HasNoPartToTell() =>
        Assert.Contains("was not found out", PlanWords.Proof(Worth(800, 920, locked: 800)), StringComparison.Ordinal);

    private static Plan Worth(double points, double bound, double locked) =>
        new(PlanStatus.Feasible, points, bound, locked, (bound - points) / (bound - locked), 1, [], [], [], [], []);
}
