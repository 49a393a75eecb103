using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Dosing;
using Jumpwright.Exercises;
using Jumpwright.Progression;
using Jumpwright.Recordings;
using Jumpwright.Tests.Athletes;
using Jumpwright.Tests.Progression;
using Jumpwright.Tests.Safety;
using Jumpwright.Trials;

namespace Jumpwright.Tests.Dosing;

/// <summary>How fast a box rises: by one step, after clean sessions from the one before.</summary>
public class DropRiseTests
{
    private static readonly Catalogue Standard = Catalogue.Standard;
    private static readonly ImmutableArray<KitCount> AllKit = [.. KitIds.All.Select(k => new KitCount(k, 9))];

    /// <summary>Drop jumps measured from 30 and 50 cm: quick, and best from the highest.</summary>
    private static readonly History Measured = new[] { (0.30, 1.4), (0.40, 1.8), (0.50, 2.3) }
        .Aggregate(
            new Story(Patient.Well),
            (story, j) =>
                story.Times(
                    3,
                    s =>
                        s.Jumped(
                            JumpTask.DropJump,
                            [
                                (MeasureNames.ReactiveStrengthIndex, j.Item2, 0.02),
                                (MeasureNames.ContactTime, 0.20, 0.001),
                                (MeasureNames.DropHeight, 0.9 * j.Item1, 0.01),
                            ],
                            dropM: j.Item1
                        )
                )
        )
        .History;

    private static AthleteStory Log => new();

    /// <summary>The dose on a ladder that has everything open, so that the height alone is asked.</summary>
    private static Dose? Of(string exercise, AthleteStory log)
    {
        Ladder ladder = log.Ladder() with
        {
            Rungs = [.. Standard.Exercises.Select(e => new Rung(e.Id, RungState.Owned, []))],
        };
        return Doses
            .For(
                Standard.Find(exercise)!,
                new OpenWork(ladder, [], Standard, AllKit),
                Profiling.Of(Measured, Story.Today),
                Measured,
                AthleteStory.Today
            )
            .TryGet(out Dose? dose, out _)
            ? dose
            : null;
    }

    private static AthleteStory Twice(string exercise, double dropM) =>
        Log.Did(exercise, 7, dropM: dropM).Did(exercise, 3, dropM: dropM);

    [Fact]
    public void FirstDrop_IsTheLowest()
    {
        Assert.Equal(0.10, Of("low-drop-landing", Log)!.DropHeightM);
        Assert.Equal(0.10, Of("low-drop-jump", Log)!.DropHeightM);
        Assert.Null(Of("drop-landing", Log));
        Assert.Null(Of("depth-jump", Log));
    }

    /// <summary>10, 20, 30 cm: a landing from 30 cm is a step above 20, never two above 10.</summary>
    [Fact]
    public void Landing_RisesByOneStep_AfterTwoCleanSessions()
    {
        Assert.Equal(0.10, Of("low-drop-landing", Log.Did("low-drop-landing", 3, dropM: 0.10))!.DropHeightM);
        AthleteStory ten = Twice("low-drop-landing", 0.10);
        Assert.Equal(0.20, Of("low-drop-landing", ten)!.DropHeightM);
        Assert.Null(Of("drop-landing", ten));
        AthleteStory twenty = Twice("low-drop-landing", 0.20);
        Assert.Equal(0.20, Of("low-drop-landing", twenty)!.DropHeightM);
        Assert.Equal(0.30, Of("drop-landing", twenty)!.DropHeightM);
    }

    /// <summary>A landing that is held says nothing of a rebound; a rebound asks more than a landing.</summary>
    [Fact]
    public void Rebound_IsNotOpenedByLandings_ButOpensThem()
    {
        Assert.Null(Of("depth-jump", Twice("drop-landing", 0.30)));
        Assert.Equal(0.30, Of("depth-jump", Twice("low-drop-jump", 0.20))!.DropHeightM);
        Assert.Equal(0.30, Of("drop-landing", Twice("low-drop-jump", 0.20))!.DropHeightM);
    }

    [Fact]
    public void OneLeg_IsNotOpenedByTwo()
    {
        Assert.Equal(0.10, Of("low-drop-landing-to-one-leg", Twice("drop-landing", 0.30))!.DropHeightM);
        Assert.Equal(0.20, Of("low-drop-landing-to-one-leg", Twice("low-drop-landing-to-one-leg", 0.10))!.DropHeightM);
    }

    /// <summary>Their own jumps speak for 50 cm; the log leads there step by step, and the dose says so.</summary>
    [Fact]
    public void DepthJump_GoesTowardsItsBestHeight_AStepAtATime()
    {
        Dose first = Of("depth-jump", Twice("low-drop-jump", 0.20))!;
        Assert.Equal(0.30, first.DropHeightM);
        Assert.Contains(
            first.Because,
            b => b.ToString().Contains("come before a higher box", StringComparison.Ordinal)
        );
        Assert.Equal(
            0.30,
            Of("depth-jump", Twice("low-drop-jump", 0.20).Did("depth-jump", 2, dropM: 0.30))!.DropHeightM
        );
        Dose second = Of("depth-jump", Twice("depth-jump", 0.30))!;
        Assert.Equal(0.40, second.DropHeightM);
        Assert.Contains(
            second.Because,
            b => b.ToString().Contains("a step above 30 cm, from which the log holds 2 clean", StringComparison.Ordinal)
        );
        Assert.Equal(0.50, Of("depth-jump", Twice("depth-jump", 0.40))!.DropHeightM);
        Assert.Equal(0.50, Of("depth-jump", Twice("depth-jump", 0.50))!.DropHeightM);
    }

    /// <summary>However high somebody rebounds from already: another exercise is begun at its lowest.</summary>
    [Fact]
    public void NewExercise_BeginsAtItsLowest() =>
        Assert.Equal(0.30, Of("depth-jump-to-box", Twice("depth-jump", 0.50))!.DropHeightM);

    /// <summary>Whoever does depth jumps does not go back to 10 cm, but to the box of their own log.</summary>
    [Fact]
    public void LowDropJump_OfWhoIsQuickFromHigher_StaysAtTheBoxOfTheLog() =>
        Assert.Equal(0.20, Of("low-drop-jump", Twice("low-drop-jump", 0.20))!.DropHeightM);

    [Fact]
    public void SessionThatWentWrong_TakesBackItsHeightAndWhatIsHigher()
    {
        AthleteStory wrong = Log.Did("depth-jump", 12, dropM: 0.30)
            .Did("depth-jump", 10, dropM: 0.30)
            .Did("depth-jump", 8, dropM: 0.40)
            .Did("depth-jump", 6, dropM: 0.40)
            .Did("depth-jump", 4, faults: 3, dropM: 0.40);
        Assert.Equal(0.40, Of("depth-jump", wrong)!.DropHeightM);
        Assert.Null(Of("depth-jump", wrong.Did("depth-jump", 2, faults: 2)));
    }

    [Fact]
    public void WhatNobodyWroteDown_ShowsNoHeight()
    {
        Assert.Null(Of("depth-jump", Log.Did("low-drop-jump", 7).Did("low-drop-jump", 3)));
        Assert.Null(
            Of(
                "depth-jump",
                Log.Did("low-drop-jump", 7, faults: null, dropM: 0.20).Did("low-drop-jump", 3, pain: null, dropM: 0.20)
            )
        );
        Assert.Null(Of("depth-jump", Log.Did("low-drop-jump", 3, dropM: 0.20).Did("low-drop-jump", 3, dropM: 0.20)));
    }

    /// <summary>After six weeks an old height says nothing any more.</summary>
    [Fact]
    public void OldHeight_Fades()
    {
        Assert.NotNull(
            Of("depth-jump", Log.Did("low-drop-jump", 42, dropM: 0.20).Did("low-drop-jump", 40, dropM: 0.20))
        );
        Assert.Null(Of("depth-jump", Log.Did("low-drop-jump", 43, dropM: 0.20).Did("low-drop-jump", 40, dropM: 0.20)));
    }
}
