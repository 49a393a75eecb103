using Jumpwright.Exercises;

namespace Jumpwright.Tests.Exercises;

/// <summary>The exercises of a stage stand in the order they are taught.</summary>
public class TeachingOrderTests
{
    private static readonly string[] Ids = [.. Catalogue.Standard.InTeachingOrder().Select(e => e.Id)];

    [Fact]
    public void EveryExercise_StandsOnce_StageByStage()
    {
        Assert.Equal(Catalogue.Standard.Exercises.Length, Ids.Distinct().Count());
        Stage[] stages = [.. Ids.Select(id => Catalogue.Standard.Find(id)!.Stage)];
        Assert.Equal(stages.Order(), stages);
    }

    [Theory]
    [InlineData("snap-down", "snap-down-to-one-leg", "both legs before one")]
    [InlineData("rotational-drop-landing", "split-snap-down", "both legs before one")]
    [InlineData("pogo-hop", "single-leg-pogo", "both legs before one")]
    [InlineData("single-tuck-jump", "continuous-tuck-jumps", "single before continuous")]
    [InlineData("standing-long-jump", "repeated-long-jumps", "single before continuous")]
    [InlineData("rear-foot-elevated-jump", "rear-foot-elevated-jump-continuous", "single before continuous")]
    [InlineData("low-pogo", "pogo-hop", "low before high")]
    [InlineData("low-box-jump", "box-jump", "low before high")]
    [InlineData("low-drop-landing", "drop-landing", "low before high")]
    [InlineData("low-drop-jump-to-box", "depth-jump", "low before high")]
    [InlineData("band-resisted-jump", "hex-bar-jump", "what pulls before what is carried")]
    [InlineData("hex-bar-lift", "hex-bar-jump", "lifted before it is jumped with")]
    public void TheTradesOrder(string first, string then, string why) =>
        Assert.True(Array.IndexOf(Ids, first) < Array.IndexOf(Ids, then), why);

    [Fact]
    public void WithinAStage_NothingStandsBeforeWhatItBuildsOn()
    {
        foreach (Exercise exercise in Catalogue.Standard.Exercises)
        {
            foreach (
                Exercise before in exercise
                    .Regressions.Select(r => Catalogue.Standard.Find(r)!)
                    .Where(r => r.Stage == exercise.Stage)
            )
            {
                Assert.True(
                    Array.IndexOf(Ids, before.Id) < Array.IndexOf(Ids, exercise.Id),
                    $"{exercise.Id} stands before {before.Id}, which it builds on"
                );
            }
        }
    }

    [Fact]
    public void WithinAStage_BothLegsComeBeforeOne()
    {
        foreach (var stage in Catalogue.Standard.InTeachingOrder().GroupBy(e => e.Stage))
        {
            bool[] oneLeg = [.. stage.Select(e => e.Limb != "both")];
            Assert.Equal(oneLeg.Order(), oneLeg);
        }
    }

    [Fact]
    public void AnOwnExerciseThatLeadsBackToItself_StillHasAPlace()
    {
        Exercise jump = Catalogue.Standard.Find("countermovement-jump")!;
        Catalogue own = Catalogue.Standard with
        {
            Exercises =
            [
                jump with
                {
                    Id = "one",
                    Regressions = ["two"],
                    Progressions = [],
                },
                jump with
                {
                    Id = "two",
                    Regressions = ["one"],
                    Progressions = [],
                },
            ],
        };
        Assert.Equal(2, own.InTeachingOrder().Length);
    }
}
