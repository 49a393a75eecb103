using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Dosing;
using Jumpwright.Exercises;
using Jumpwright.Progression;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Safety;
using Jumpwright.Tests.Athletes;
using Jumpwright.Tests.Safety;
using Jumpwright.Trials;

namespace Jumpwright.Tests.Dosing;

public class DoseTests
{
    private static readonly Catalogue Standard = Catalogue.Standard;

    /// <summary>A ladder on which everything stands at one state, so that the dose alone is tested.</summary>
    private static Ladder All(RungState state) =>
        new("a01", Story.Today, [.. Standard.Exercises.Select(e => new Rung(e.Id, state, []))]);

    private static Outcome<Dose> Of(string id, History history, RungState state = RungState.Owned) =>
        Doses.For(
            Standard.Find(id)!,
            All(state),
            Profiling.Of(history, Story.Today),
            history,
            SafetyRules.For(history, Story.Today),
            Standard,
            Story.Today
        );

    private static History Drops(params (double BoxM, double Index, double ContactS)[] jumps) =>
        jumps
            .Aggregate(
                new Story(Patient.Well),
                (story, j) =>
                    story.Times(
                        3,
                        s =>
                            s.Jumped(
                                JumpTask.DropJump,
                                [
                                    (MeasureNames.ReactiveStrengthIndex, j.Index, 0.02),
                                    (MeasureNames.ContactTime, j.ContactS, 0.001),
                                    (MeasureNames.DropHeight, 0.9 * j.BoxM, 0.01),
                                ],
                                dropM: j.BoxM
                            )
                    )
            )
            .History;

    [Fact]
    public void ClosedExercise_HasNoDose() =>
        Assert.False(Of("pogo-hop", Patient.Well, RungState.Closed).TryGet(out _, out _));

    [Fact]
    public void DepthJump_TakesTheLowestBoxThatCannotBeToldFromTheBest()
    {
        Dose dose = Of("depth-jump", Drops((0.30, 1.99, 0.20), (0.40, 2.00, 0.21), (0.50, 1.60, 0.24))).Require();
        Assert.Equal(0.30, dose.DropHeightM);
        Assert.Equal(0.27, dose.ExpectedDropHeightM!.Value, 9);
    }

    [Fact]
    public void DepthJump_ClearlyBetterFromTheHigherBox_TakesIt() =>
        Assert.Equal(0.40, Of("depth-jump", Drops((0.30, 1.40, 0.22), (0.40, 2.00, 0.21))).Require().DropHeightM);

    [Fact]
    public void DepthJump_BestBoxHasALongContact_IsPassedOver() =>
        Assert.Equal(0.30, Of("depth-jump", Drops((0.30, 1.60, 0.22), (0.40, 2.40, 0.27))).Require().DropHeightM);

    [Fact]
    public void DepthJump_NeverMeasured_IsRefusedWithASentence()
    {
        Assert.False(Of("depth-jump", Patient.Well).TryGet(out _, out Refusal? refusal));
        Assert.Contains("no drop jump was measured", refusal!.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void DepthJump_Over100Kilograms_StaysUnderTheCap()
    {
        History heavy = Drops((0.40, 1.5, 0.22), (0.50, 2.4, 0.22)).Weighing(110);
        Assert.Equal(0.40, Of("depth-jump", heavy).Require().DropHeightM);
    }

    [Fact]
    public void BoxJump_NotOwned_GetsTheLowestBox() =>
        Assert.Equal(
            Standard.Find("box-jump")!.BoxRangeM!.Value.MinM,
            Of("box-jump", new Story(Patient.Well).Counter(0.55).History, RungState.Open).Require().BoxHeightM
        );

    [Fact]
    public void BoxJump_NeverHigherThanAHalfSquatLandingAllows()
    {
        foreach (double height in new[] { 0.15, 0.30, 0.45, 0.60 })
        {
            History history = new Story(Patient.Well).Counter(height).Counter(height).History;
            double box = Of("box-jump", history).Require().BoxHeightM!.Value;
            Assert.True(
                box <= Math.Max(Standard.Find("box-jump")!.BoxRangeM!.Value.MinM, height + (0.18 * 1.75) - 0.20 + 1e-9),
                $"{height}: {box}"
            );
        }
    }

    [Fact]
    public void HexBarJump_LightShareOfBodyMass_BarIncluded()
    {
        Dose dose = Of("hex-bar-jump", Patient.Well.Weighing(90)).Require();
        Assert.Equal(17.5, dose.ExternalLoadKg);
        Assert.Contains("bar included", dose.LoadBasis, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(null)]
    [InlineData(30.0)]
    public void HexBarJump_MassUnknownOrTooSmallForAnyBar_IsRefused(double? mass) =>
        Assert.False(Of("hex-bar-jump", Patient.Well.Weighing(mass)).TryGet(out _, out _));

    [Fact]
    public void HexBarPull_NeedsAFreshTest()
    {
        Assert.False(Of("hex-bar-pull", Patient.Well).TryGet(out _, out _));
        Assert.False(
            Of("hex-bar-pull", new Story(Patient.Well).Screened("hex-bar-load", 120, daysAgo: 43).History)
                .TryGet(out _, out _)
        );
        Assert.Equal(
            90,
            Of("hex-bar-pull", new Story(Patient.Well).Screened("hex-bar-load", 120, daysAgo: 42).History)
                .Require()
                .ExternalLoadKg
        );
    }

    [Fact]
    public void Beginner_GetsFewerSetsAndTheLeastReps()
    {
        History beginner = Patient.Well with { Athlete = Patient.Well.Athlete with { Level = TrainingLevel.Beginner } };
        Dose used = Of("pogo-hop", Patient.Well).Require();
        Dose careful = Of("pogo-hop", beginner).Require();
        Assert.True(careful.SetsMax < used.SetsMax);
        Assert.True(careful.Reps < used.Reps);
    }

    /// <summary>The ladder is of Monday, the rulings of Thursday, when a restriction has run out: no dose.</summary>
    [Fact]
    public void OpenRung_UnderALaterDaysRulings_IsRefusedWithTheirSentence()
    {
        History history = Patient.Well.Restricted("all", untilInDays: 1);
        Outcome<Dose> dose = Doses.For(
            Standard.Find("snap-down")!,
            All(RungState.Open),
            Profiling.Of(history, Story.Today),
            history,
            SafetyRules.For(history, Story.Today.PlusDays(3)),
            Standard,
            Story.Today.PlusDays(3)
        );
        Assert.False(dose.TryGet(out _, out Refusal? refusal));
        Assert.Contains("expired: ask", refusal!.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void EveryDose_KeepsEveryRuling_AndItsInsteadAsksLess()
    {
        foreach (RuleCase @case in RuleCases.All)
        {
            History history = @case.History with
            {
                Trials = Drops((0.20, 1.5, 0.2), (0.30, 1.8, 0.2), (0.50, 2.2, 0.2)).Trials,
            };
            ImmutableArray<Ruling> rulings = SafetyRules.For(history, Story.Today);
            foreach (Exercise exercise in Standard.Exercises)
            {
                if (!Of(exercise.Id, history).TryGet(out Dose? dose, out _))
                {
                    continue;
                }

                Assert.DoesNotContain(rulings, r => r.Effect.Forbids(exercise.FactsAt(dose.DropHeightM)));
                Assert.InRange(dose.Reps, exercise.Dose.RepsMin, exercise.Dose.RepsMax);
                Assert.InRange(dose.SetsMax, dose.SetsMin, exercise.Dose.SetsMax);
                Assert.NotEmpty(dose.Because);
                if (dose.ReplacesIfSore is { } instead)
                {
                    Exercise easier = Standard.Find(instead)!;
                    Assert.DoesNotContain(rulings, r => r.Effect.Forbids(easier.FactsAt(easier.DropRangeM?.MinM)));
                    Assert.All(
                        Enum.GetValues<Tissue>(),
                        t => Assert.True(easier.Demand.GetValueOrDefault(t) <= exercise.Demand.GetValueOrDefault(t))
                    );
                    Assert.Contains(
                        Enum.GetValues<Tissue>(),
                        t => easier.Demand.GetValueOrDefault(t) < exercise.Demand.GetValueOrDefault(t)
                    );
                }
            }
        }
    }

    [Fact]
    public void StopRule_Sentence_NamesWhatTheDataSay()
    {
        string sentence = new StopRule(10, 10, 2, 2, true).Sentence();
        Assert.Equal(
            "Stop when you jump clearly lower (by 10 %), contact gets clearly longer (by 10 %), 2 landings go wrong, pain is above 2 of 10 or it hurts in a new place.",
            sentence
        );
        Assert.Equal("Stop when pain is above 2 of 10.", new StopRule(null, null, null, 2, false).Sentence());
    }
}
