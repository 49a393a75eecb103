using Jumpwright.App.Pages;
using Jumpwright.Progression;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>What stands in the way of several steps alike is said once, and every other reason stays where it is.</summary>
public class SharedReasonTests
{
    private static readonly RungReason Ruled = new("pain", CriterionVerdict.NotMet, $"No hops.", null, null, null);
    private static readonly RungReason Met = new("screen", CriterionVerdict.Met, $"Met: 2 faults.", 1, null, null);
    private static readonly RungReason Own = new(
        "step",
        CriterionVerdict.NotTested,
        $"Owns pogo.",
        0,
        null,
        $"two days"
    );

    [Fact]
    public void WhatTwoShare_IsSaidOnce_AndNamesBoth()
    {
        SharedReason shared = SharedReason
            .Of([
                new Rung("a", RungState.Closed, [Ruled, Own, Met]),
                new Rung("b", RungState.Closed, [Ruled with { }, Met]),
                new Rung("c", RungState.Open, [Met]),
            ])
            .Single();

        Assert.Equal(["a", "b"], shared.Rungs.Select(r => r.ExerciseId));
        Assert.True(shared.Holds(Ruled));
        Assert.False(shared.Holds(Own));
        Assert.False(shared.Holds(Met));
    }

    [Fact]
    public void ReasonsOfTheSameExercises_StandUnderTheirNamesOnce()
    {
        RungReason second = Ruled with { Sentence = $"No run-ups." };
        SharedReason shared = SharedReason
            .Of([new Rung("a", RungState.Closed, [Ruled, second]), new Rung("b", RungState.Closed, [Ruled, second])])
            .Single();

        Assert.Equal([Ruled, second], shared.Reasons);
    }

    [Fact]
    public void TheSameWordsWithAnotherWayToSettleIt_AreAnotherReason() =>
        Assert.Empty(
            SharedReason.Of([
                new Rung("a", RungState.Closed, [Own]),
                new Rung("b", RungState.Closed, [Own with { CheapestTest = $"three days" }]),
            ])
        );
}
