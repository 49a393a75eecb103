using Jumpwright.Recordings;
using Jumpwright.Simulation.Chance;
using Jumpwright.Simulation.Devices;
using Jumpwright.Simulation.Tasks;
using Jumpwright.Trials;

namespace Jumpwright.Tests.Trials;

/// <summary>What can spoil a recording without a trace: a ringing plate, one foot first, a hand on the plate. It is said, or named doubtful.</summary>
public class UnsureEdgeTests
{
    private static ForceRecording Force(SimulatedRecording recording, JumpTask task, double? bodyMassKg = null)
    {
        double[] total = recording.Settings.TwoPlates
            ? [.. recording.LeftN.Zip(recording.RightN, (l, r) => l + r)]
            : recording.TotalN;
        return new ForceRecording(
            new RecordingLabels(Task: task, BodyMassKg: bodyMassKg),
            [],
            0,
            recording.Settings.RateHz,
            total,
            recording.LeftN,
            recording.RightN
        );
    }

    private static SimulatedMotion DropJump(SeededRandom random) =>
        DropJumps.Make(
            new DropJumpSettings
            {
                BodyMassKg = 70,
                SwayN = 1,
                StandAfterS = 3.5,
            },
            random
        );

    [Fact]
    public void RingingPlate_AtLowRates_ShiftsNoTrustedTakeOffByMoreThanSixMilliseconds()
    {
        int doubted = 0;
        const int count = 300;
        double[] rates = [200, 250, 300];
        for (ulong i = 0; i < count; i++)
        {
            var random = SeededRandom.For(20270107, i);
            SimulatedMotion motion = CountermovementJumps.Make(
                new CountermovementSettings
                {
                    BodyMassKg = random.Uniform(35, 60),
                    TakeOffVelocityMS = random.Uniform(2, 3.1),
                    SwayN = 2,
                },
                random
            );
            SimulatedRecording recording = Plates.Record(
                motion,
                new PlateSettings
                {
                    TwoPlates = false,
                    RateHz = rates[i % 3],
                    RingingN = random.Uniform(20, 60),
                    RingingHz = random.Uniform(40, 90),
                },
                random
            );
            Trial trial = Assert.Single(Measuring.Of(Force(recording, JumpTask.CountermovementJump)).Require());
            if (trial.FindTrusted(MeasureNames.FlightTime) is { } flight)
            {
                Assert.Equal(recording.Truth.Find(MeasureNames.FlightTime)!.Value, flight.Value, 0.006);
            }
            else
            {
                doubted++;
            }
        }

        // The swing is read through (decision 39): few or none need be doubted.
        Assert.InRange(doubted, 0, count / 8);
    }

    [Theory]
    [InlineData(true, "left")]
    [InlineData(false, "right")]
    public void DropJump_OneFootLeads_IsSaidWithItsMillisecondsAndTheAsymmetryDoubted(bool left, string foot)
    {
        var random = SeededRandom.For(20270108, 1);
        var plate = new PlateSettings { LeadS = 0.025, LeftLeads = left };
        Trial trial = Measuring.Of(Force(Plates.Record(DropJump(random), plate, random), JumpTask.DropJump)).Require()[
            0
        ];
        // Once for the contact, and once for the landing after it where that differs by a millisecond.
        string[] said = [.. trial.Warnings.Where(w => w.Contains("foot lands", StringComparison.Ordinal))];
        Assert.InRange(said.Length, 1, 2);
        Assert.All(said, s => Assert.StartsWith($"The {foot} foot", s, StringComparison.Ordinal));
        string sentence = said[0];
        double ms = double.Parse(
            sentence.Split(" ms")[0].Split(' ')[^1],
            System.Globalization.CultureInfo.InvariantCulture
        );
        Assert.InRange(ms, 22, 31);
        Assert.Equal(
            [
                MeasureNames.AsymmetryBrakingImpulse,
                MeasureNames.AsymmetryLandingImpulse,
                MeasureNames.AsymmetryPropulsiveImpulse,
            ],
            trial.Doubtful
        );
    }

    [Fact]
    public void DropJump_FeetTogether_SaysNothingOfAFoot()
    {
        var random = SeededRandom.For(20270108, 2);
        Trial trial = Measuring
            .Of(
                Force(
                    Plates.Record(DropJump(random), new PlateSettings { AsymmetryPct = 12 }, random),
                    JumpTask.DropJump
                )
            )
            .Require()[0];
        Assert.DoesNotContain(trial.Warnings, w => w.Contains("foot lands", StringComparison.Ordinal));
        Assert.Empty(trial.Doubtful);
    }

    [Fact]
    public void DropJump_HandOnTheEmptyPlateBefore_IsDoubtful()
    {
        var random = SeededRandom.For(20270108, 3);
        SimulatedRecording recording = Plates.Record(DropJump(random), new PlateSettings { TwoPlates = false }, random);
        ForceRecording force = Force(recording, JumpTask.DropJump);
        double[] touched = force.TotalN.ToArray();
        int until = (int)(recording.Truth.Events.FirstTouchDownS!.Value * force.RateHz);
        for (int i = 0; i < until - 60; i++)
        {
            touched[i] += 25;
        }

        Trial trial = Measuring.Of(force with { TotalN = touched }).Require()[0];
        Assert.Contains(trial.Warnings, w => w.Contains("leans on it", StringComparison.Ordinal));
        Assert.Contains(MeasureNames.DropHeight, trial.Doubtful);
        Assert.Contains(MeasureNames.JumpHeight, trial.Doubtful);
    }

    [Fact]
    public void DropJump_WrongBodyMassOnTheLabel_IsSaidAndThePlatesWeightUsed()
    {
        var random = SeededRandom.For(20270108, 4);
        SimulatedRecording recording = Plates.Record(DropJump(random), new PlateSettings(), random);
        Trial trial = Measuring.Of(Force(recording, JumpTask.DropJump, bodyMassKg: 74)).Require()[0];
        Assert.Contains(trial.Warnings, w => w.Contains("the plate's weight was used", StringComparison.Ordinal));
        Assert.Equal(recording.Truth.Find(MeasureNames.BodyWeight)!.Value, trial.Value(MeasureNames.BodyWeight), 2.0);
    }
}
