using Jumpwright.Recordings;
using Jumpwright.Simulation.Chance;
using Jumpwright.Simulation.Devices;
using Jumpwright.Simulation.Tasks;
using Jumpwright.Trials;

namespace Jumpwright.Tests.Trials;

/// <summary>One recording may hold more than the jump that was meant: which one is measured, and what is said of the rest.</summary>
public sealed class SelectionTests
{
    private static readonly PlateSettings OnePlate = new() { TwoPlates = false, NoiseN = 1 };

    [Fact]
    public void SteppingOn_BeforeTheJump_IsNoTrial_AndTheZeroIsReadBeforeIt()
    {
        SimulatedRecording recording = Jump(1, OnePlate with { StepOnS = 1.5, OffsetN = 12 });
        Trial trial = Assert.Single(Measure(recording.TotalN, JumpTask.CountermovementJump));
        Near(recording, trial, MeasureNames.JumpHeight, 0.003);
        Near(recording, trial, MeasureNames.BodyWeight, 1);
    }

    [Fact]
    public void TwoJumps_InOneRecording_AreTwoTrials()
    {
        // Without sway, which at the seam of two recordings would leap.
        SimulatedRecording first = Jump(2, OnePlate, swayN: 0);
        SimulatedRecording second = Jump(3, OnePlate, swayN: 0);
        Trial[] trials = Measure([.. first.TotalN, .. second.TotalN], JumpTask.CountermovementJump);
        Assert.Equal([1, 2], trials.Select(t => t.Number));
        Near(first, trials[0], MeasureNames.JumpHeight, 0.004);
        Near(second, trials[1], MeasureNames.JumpHeight, 0.004);
    }

    [Theory]
    [InlineData(0.7)]
    [InlineData(1.1)]
    public void BounceAfterTheLanding_IsNoTrial_AndIsSaid(double bounceMS)
    {
        var random = SeededRandom.For(20270111, 4);
        SimulatedRecording recording = Plates.Record(
            CountermovementJumps.Make(Jumper with { BounceVelocityMS = bounceMS }, random),
            OnePlate,
            random
        );
        Trial trial = Assert.Single(Measure(recording.TotalN, JumpTask.CountermovementJump));
        Near(recording, trial, MeasureNames.JumpHeight, 0.004);
        Near(recording, trial, MeasureNames.FlightTime, 0.003);
        Assert.Contains(trial.Warnings, w => w.Contains("bounce", StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public void Fidget_BeforeTheJump_IsNotItsOnset()
    {
        SimulatedRecording recording = Jump(5, OnePlate, standS: 4);
        double[] force = [.. recording.TotalN];
        // A shift of the weight, up and down again, a second after the start: it leaves no velocity behind.
        for (int i = 0; i < 500; i++)
        {
            force[1000 + i] += 70 * Math.Sin(2 * Math.PI * i / 250);
        }

        Trial trial = Assert.Single(Measure(force, JumpTask.CountermovementJump));
        Near(recording, trial, MeasureNames.JumpHeight, 0.004);
        Assert.Equal(recording.Truth.Events.OnsetS!.Value, trial.Events.OnsetS!.Value, 0.08);
    }

    [Fact]
    public void LandingOffThePlate_GivesHeightByImpulse_AndNoFlight()
    {
        var random = SeededRandom.For(20270111, 6);
        SimulatedRecording recording = Plates.Record(
            CountermovementJumps.Make(Jumper with { LandsElsewhere = true, StandBeforeS = 3 }, random),
            OnePlate,
            random
        );
        Trial trial = Assert.Single(Measure(recording.TotalN, JumpTask.CountermovementJump));
        Near(recording, trial, MeasureNames.JumpHeight, 0.008);
        Assert.Null(trial.Find(MeasureNames.FlightTime));
        Assert.Null(trial.Find(MeasureNames.JumpHeightFlightTime));
        Assert.Null(trial.Find(MeasureNames.PeakLandingForce));
        Assert.Contains(trial.Warnings, w => w.Contains("does not land on the plate", StringComparison.Ordinal));
    }

    [Fact]
    public void BoxJump_EvenWhenTheyStepBackOnThePlateAtOnce_HasNoFlightTimeHeight()
    {
        SimulatedRecording recording = Jump(7, OnePlate);
        Trial trial = Measure(recording.TotalN, JumpTask.BoxJump)[0];
        Assert.NotNull(trial.Find(MeasureNames.JumpHeight));
        Assert.Null(trial.Find(MeasureNames.JumpHeightFlightTime));
    }

    /// <summary>Somebody pumps before a box jump, so hard that the feet leave the plate for a moment.</summary>
    [Fact]
    public void BoxJump_AHopBeforeIt_IsNotTakenForIt_AndIsSaid()
    {
        var random = SeededRandom.For(20270111, 8);
        SimulatedRecording hop = Plates.Record(
            CountermovementJumps.Make(Jumper with { TakeOffVelocityMS = 1.1, SwayN = 0 }, random),
            OnePlate,
            random
        );
        SimulatedRecording box = Plates.Record(
            CountermovementJumps.Make(Jumper with { LandsElsewhere = true, SwayN = 0 }, random),
            OnePlate,
            random
        );
        double[] force = [.. hop.TotalN, .. box.TotalN];
        Trial trial = Assert.Single(Measure(force, JumpTask.BoxJump));
        Near(box, trial, MeasureNames.JumpHeight, 0.008);
        Assert.Contains(trial.Warnings, w => w.Contains("not taken for one onto the box", StringComparison.Ordinal));
    }

    [Fact]
    public void SnapDown_WhosePlateIsNearlyUnloaded_IsNeitherAFlightNorAnEmptyPlate()
    {
        for (ulong i = 0; i < 30; i++)
        {
            var random = SeededRandom.For(20270112, i);
            SimulatedRecording recording = Plates.Record(
                SnapDowns.Make(
                    new JumperSettings
                    {
                        BodyMassKg = random.Uniform(45, 110),
                        SwayN = 2,
                        LandingDepthM = random.Uniform(0.2, 0.4),
                        StandAfterS = 2.5,
                    },
                    random
                ),
                OnePlate,
                random
            );
            Trial trial = Assert.Single(Measure(recording.TotalN, JumpTask.SnapDown));
            Near(recording, trial, MeasureNames.BodyWeight, 2);
            Near(recording, trial, MeasureNames.PeakLandingForce, 6);
            Assert.Null(trial.Find(MeasureNames.FlightTime));
        }
    }

    private static CountermovementSettings Jumper { get; } =
        new()
        {
            BodyMassKg = 68,
            SwayN = 1.5,
            StandBeforeS = 2,
            StandAfterS = 2.5,
        };

    private static SimulatedRecording Jump(ulong number, PlateSettings plate, double standS = 2, double swayN = 1.5)
    {
        var random = SeededRandom.For(20270111, number);
        return Plates.Record(
            CountermovementJumps.Make(Jumper with { StandBeforeS = standS, SwayN = swayN }, random),
            plate,
            random
        );
    }

    private static Trial[] Measure(double[] totalN, JumpTask task) =>
        [
            .. Measuring
                .Of(new ForceRecording(new RecordingLabels(), [], 0, 1000, totalN, default, default), task)
                .Require(),
        ];

    private static void Near(SimulatedRecording recording, Trial trial, string measure, double within) =>
        Assert.Equal(recording.Truth.Find(measure)!.Value, trial.Value(measure), within);
}
