using Jumpwright.Exercises;
using Jumpwright.Progression;
using NodaTime;

namespace Jumpwright.Tests.Progression;

/// <summary>The trade's usual order (common practice), walked by a beginner who meets each step in turn.</summary>
public class LadderOrderTests
{
    private static readonly Dictionary<string, int> OpenedInWeek = Walk();

    [Fact]
    public void Stages_OfABeginnerWhoMeetsEachStepInTurn_OpenInTheUsualOrder()
    {
        Stage[] order =
        [
            Stage.Landing,
            Stage.AnkleStiffness,
            Stage.PushToBox,
            Stage.FloorJump,
            Stage.Resisted,
            Stage.Shock,
            Stage.ContinuousSingleLeg,
        ];
        int[] first = [.. order.Select(FirstWeek)];
        Assert.Equal(first.Order(), first);
        Assert.Equal(0, FirstWeek(Stage.PushToBox));
        Assert.True(FirstWeek(Stage.FloorJump) < FirstWeek(Stage.Resisted));
        Assert.True(FirstWeek(Stage.Resisted) < FirstWeek(Stage.Shock));
    }

    [Theory]
    [InlineData("snap-down", "snap-down-to-one-leg")]
    [InlineData("snap-down", "drop-landing")]
    [InlineData("low-pogo", "pogo-hop")]
    [InlineData("pogo-hop", "single-leg-pogo")]
    [InlineData("seated-box-jump", "foot-on-box-jump")]
    [InlineData("box-jump", "countermovement-jump")]
    [InlineData("pogo-hop", "single-tuck-jump")]
    [InlineData("single-tuck-jump", "continuous-tuck-jumps")]
    [InlineData("countermovement-jump", "band-resisted-jump")]
    [InlineData("squat-jump", "hex-bar-jump")]
    [InlineData("continuous-tuck-jumps", "low-drop-jump")]
    [InlineData("low-drop-jump", "depth-jump")]
    [InlineData("rear-foot-elevated-jump", "rear-foot-elevated-jump-continuous")]
    [InlineData("approach-rehearsal", "approach-jump-two-feet")]
    [InlineData("approach-rehearsal-one-foot", "approach-jump-one-foot")]
    public void Exercises_OneBeforeTheOther_OpenInThatOrder(string before, string after) =>
        Assert.True(OpenedInWeek[before] < OpenedInWeek[after], $"{OpenedInWeek[before]} and {OpenedInWeek[after]}");

    [Fact]
    public void RunUps_AtLowSpeed_ArePractisedBeforeAnythingResisted() =>
        Assert.True(OpenedInWeek["approach-rehearsal"] < FirstWeek(Stage.Resisted));

    [Fact]
    public void EveryExercise_ForWhoMeetsEverything_OpensInTheEnd() =>
        Assert.Equal(
            Catalogue.Standard.Exercises.Select(e => e.Id).Order(StringComparer.Ordinal),
            OpenedInWeek.Keys.Order(StringComparer.Ordinal)
        );

    private static int FirstWeek(Stage stage) =>
        Catalogue.Standard.Exercises.Where(e => e.Stage == stage).Min(e => OpenedInWeek[e.Id]);

    /// <summary>Week by week: do all that is open, twice and cleanly; be tested as the steps ask.</summary>
    private static Dictionary<string, int> Walk()
    {
        const int weeks = 16;
        var opened = new Dictionary<string, int>(StringComparer.Ordinal);
        AthleteStory story = new();
        for (int week = 0; week < weeks; week++)
        {
            int daysAgo = (weeks - week) * 7;
            story = (story with { Measures = [], Screens = [] }).WellTested(daysAgo);
            Ladder ladder = story.On(AthleteStory.Today.PlusDays(-daysAgo));
            foreach (Rung rung in ladder.Rungs.Where(r => r.State != RungState.Closed))
            {
                opened.TryAdd(rung.ExerciseId, week);
                story = story.Did(rung.ExerciseId, daysAgo - 1).Did(rung.ExerciseId, daysAgo - 4);
            }
        }

        return opened;
    }
}
