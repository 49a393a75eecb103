using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Simulation.Chance;
using Jumpwright.Simulation.Devices;
using Jumpwright.Simulation.Tasks;
using Jumpwright.Simulation.Validating;
using Jumpwright.Trials;

namespace Jumpwright.Tests.Trials;

/// <summary>What a landing takes from the body, how the feet share each phase, and timers too coarse for a centimetre.</summary>
public class LandingAndSidesTests
{
    [Theory]
    [InlineData(JumpTask.CountermovementJump)]
    [InlineData(JumpTask.DropJump)]
    [InlineData(JumpTask.DropLanding)]
    public void TheLandingsNetImpulse_IsMassTimesTheSpeedOfTouchDown(JumpTask task)
    {
        for (int i = 0; i < 12; i++)
        {
            SimulatedCase jump = Population.Clean(task, 20270115, i);
            Trial trial = Measuring.Of(Recording.From(jump.Bytes).Require(), task).Require()[0];
            Measure impulse = trial.Find(MeasureNames.LandingNetImpulse)!;
            double truth = jump.Truth.Find(MeasureNames.LandingNetImpulse)!.Value;
            Assert.Equal(Unit.NewtonSecond, impulse.Unit);
            Assert.Equal(truth, impulse.Value, Math.Max(4 * impulse.StandardUncertainty, 0.01 * truth));
        }
    }

    [Theory]
    [InlineData(JumpTask.CountermovementJump)]
    [InlineData(JumpTask.DropJump)]
    public void BrakingHasItsOwnAsymmetry_WithSignAndDoubt(JumpTask task)
    {
        for (int i = 0; i < 12; i++)
        {
            SimulatedCase jump = Population.Clean(task, 20270116, i);
            Trial trial = Measuring.Of(Recording.From(jump.Bytes).Require(), task).Require()[0];
            Measure braking = trial.Find(MeasureNames.AsymmetryBrakingImpulse)!;
            double truth = jump.Truth.Find(MeasureNames.AsymmetryBrakingImpulse)!.Value;
            Assert.Equal(truth, braking.Value, Math.Max(4 * braking.StandardUncertainty, 0.2));
            Assert.NotNull(trial.Find(MeasureNames.AsymmetryLandingImpulse));
        }
    }

    /// <summary>Who stops recording in the middle of a landing has no peak of it: the largest sample is only the last.</summary>
    [Theory]
    [InlineData(0.02, true)]
    [InlineData(0.2, true)]
    [InlineData(1.5, false)]
    public void ARecordingThatEndsInTheLanding_HasNoSurePeak(double afterTouchDownS, bool doubtful)
    {
        SimulatedCase jump = Population.Clean(JumpTask.CountermovementJump, 20270123, 1);
        var whole = (ForceRecording)Recording.From(jump.Bytes).Require();
        int samples = (int)((jump.Truth.Events.TouchDownS!.Value + afterTouchDownS - whole.StartS) * whole.RateHz);
        Trial trial = Measuring
            .Of(
                new ForceRecording(
                    whole.Labels,
                    [],
                    whole.StartS,
                    whole.RateHz,
                    whole.TotalN[..samples],
                    whole.LeftN[..samples],
                    whole.RightN[..samples]
                ),
                JumpTask.CountermovementJump
            )
            .Require()[0];
        Assert.NotNull(trial.Find(MeasureNames.JumpHeightFlightTime));
        Assert.Equal(doubtful, trial.Doubtful.Contains(MeasureNames.PeakLandingForce));
        Assert.Equal(doubtful, trial.Doubtful.Contains(MeasureNames.PeakLoadingRate));
    }

    /// <summary>A run-up that ends on one foot after the other loads the first one alone for a while: the push's sides are named doubtful then.</summary>
    [Theory]
    [InlineData(0.000, false)]
    [InlineData(0.025, true)]
    public void APlantWithOneFootFirst_MakesItsSidesDoubtful(double leadS, bool doubtful)
    {
        var random = SeededRandom.For(20270120, 4);
        SimulatedRecording approach = Plates.Record(
            Approach(random, landsElsewhere: false),
            new PlateSettings { NoiseN = 1, LeadS = leadS },
            random
        );
        Trial trial = Measuring
            .Of(
                new ForceRecording(
                    new RecordingLabels(),
                    [],
                    0,
                    1000,
                    approach.LeftN.Zip(approach.RightN, (left, right) => left + right).ToArray(),
                    approach.LeftN,
                    approach.RightN
                ),
                JumpTask.ApproachJump
            )
            .Require()[0];
        Assert.NotNull(trial.Find(MeasureNames.AsymmetryBrakingImpulse));
        Assert.Equal(doubtful, trial.Doubtful.Contains(MeasureNames.AsymmetryBrakingImpulse));
        Assert.Equal(doubtful, trial.Doubtful.Contains(MeasureNames.AsymmetryPropulsiveImpulse));
    }

    [Fact]
    public void SwappedPlates_FlipEveryPhasesAsymmetry()
    {
        ForceRecording stood = (ForceRecording)
            Recording.From(Population.Clean(JumpTask.CountermovementJump, 20270117, 1).Bytes).Require();
        ForceRecording swapped = new(stood.Labels, [], 0, stood.RateHz, stood.TotalN, stood.RightN, stood.LeftN);
        Trial one = Measuring.Of(stood, JumpTask.CountermovementJump).Require()[0];
        Trial other = Measuring.Of(swapped, JumpTask.CountermovementJump).Require()[0];
        foreach (
            string side in new[]
            {
                MeasureNames.AsymmetryBrakingImpulse,
                MeasureNames.AsymmetryPropulsiveImpulse,
                MeasureNames.AsymmetryLandingImpulse,
            }
        )
        {
            Assert.Equal(one.Value(side), -other.Value(side), 1e-9);
        }
    }

    [Fact]
    public void WeighedFirstThenRunningUp_GivesTheWeightOfTheOtherStay_AndNoHeightByImpulse()
    {
        var random = SeededRandom.For(20270118, 3);
        SimulatedRecording approach = Plates.Record(
            Approach(random, landsElsewhere: true),
            new PlateSettings { TwoPlates = false, NoiseN = 1 },
            random
        );
        double weight = 71 * Gravity.MetresPerSecondSquared;
        double[] standing = [.. Enumerable.Range(0, 3000).Select(_ => weight + random.Normal())];
        double[] steppingOff = [.. Enumerable.Range(0, 400).Select(i => weight * (1 - (i / 400.0)) + random.Normal())];
        double[] empty = [.. Enumerable.Range(0, 1500).Select(_ => random.Normal())];
        double[] total = [.. standing, .. steppingOff, .. empty, .. approach.TotalN];
        Trial trial = Measuring
            .Of(new ForceRecording(new RecordingLabels(), [], 0, 1000, total, default, default), JumpTask.ApproachJump)
            .Require()[0];
        Assert.Equal(weight, trial.Value(MeasureNames.BodyWeight), 1);
        Assert.Equal(
            approach.Truth.Find(MeasureNames.ContactTime)!.Value,
            trial.Value(MeasureNames.ContactTime),
            0.002
        );
        Assert.Null(trial.Find(MeasureNames.JumpHeight));
        Assert.Contains(Cautions.WeighedElsewhere.ToString(), trial.Warnings);
    }

    [Theory]
    [InlineData(30, true)]
    [InlineData(60, true)]
    [InlineData(240, false)]
    public void FilmTooSlowForACentimetre_SaysSo_AndItsMeansStillCount(double framesPerSecond, bool coarse)
    {
        SimulatedCase film = Population.Timed(JumpTask.CountermovementJump, framesPerSecond, 20270119, 2);
        Trial trial = Measuring.Of(Recording.From(film.Bytes).Require(), film.Task).Require()[0];
        Assert.Equal(coarse, trial.Doubtful.Contains(MeasureNames.JumpHeightFlightTime));
        Assert.Equal(coarse, trial.Warnings.Any(w => w.Contains("film faster", StringComparison.Ordinal)));
        Assert.True(trial.MayBeAveraged(MeasureNames.JumpHeightFlightTime));
    }

    [Fact]
    public void WhatIsDoubtfulForAnotherReason_MayNotBeAveraged()
    {
        Trial trial = new(1, JumpTask.CountermovementJump, new TrialEvents(), [], [], ["…"], [MeasureNames.JumpHeight]);
        Assert.False(trial.MayBeAveraged(MeasureNames.JumpHeight));
    }

    /// <summary>A run-up that ends on two feet, and three seconds of standing where it lands on the plate again.</summary>
    private static SimulatedMotion Approach(SeededRandom random, bool landsElsewhere) =>
        DropJumps.MakeApproach(
            new DropJumpSettings
            {
                BodyMassKg = 71,
                DropHeightM = 0.05,
                ContactS = 0.25,
                TakeOffVelocityMS = 2.8,
                StandBeforeS = 2,
                StandAfterS = 3,
                RiseAtTouchDownM = 0.02,
            },
            random,
            landsElsewhere
        );
}
