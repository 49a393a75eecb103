using System.Collections.Immutable;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Simulation.Chance;
using Jumpwright.Simulation.Devices;
using Jumpwright.Simulation.Tasks;
using Jumpwright.Trials;

namespace Jumpwright.Tests.Trials;

/// <summary>An event that a person sets replaces the one that was found, and the measures follow by the laws of mechanics.</summary>
public class EventsSetByHandTests
{
    [Fact]
    public void TakeOffSetLater_FlightTimeShortensByAsMuch_AndTheRestOfTheEventsStay()
    {
        ForceRecording recording = Countermovement();
        Trial found = Measured(recording);
        double later = found.Events.TakeOffS!.Value + 0.020;

        Trial set = Measured(recording, (TrialEvent.TakeOff, later));

        Assert.Equal(later, set.Events.TakeOffS!.Value, 1e-9);
        Assert.Equal(found.Events.TouchDownS, set.Events.TouchDownS);
        Assert.Equal(found.Events.BottomS!.Value, set.Events.BottomS!.Value, 0.002);
        Assert.Equal(Value(found, MeasureNames.FlightTime) - 0.020, Value(set, MeasureNames.FlightTime), 1e-9);
        // In flight only gravity acts: 20 ms of it take 0.196 m/s from the velocity (less what the toes still push).
        double lost = Value(found, MeasureNames.TakeOffVelocity) - Value(set, MeasureNames.TakeOffVelocity);
        Assert.InRange(lost, 0.15, 0.21);
        Assert.Contains(set.Warnings, w => w.StartsWith("Set by hand: take-off.", StringComparison.Ordinal));
    }

    [Fact]
    public void OnsetSetEarlier_TimeToTakeOffGrowsByAsMuch_AndTheHeightStays()
    {
        ForceRecording recording = Countermovement();
        Trial found = Measured(recording);

        Trial set = Measured(recording, (TrialEvent.Onset, found.Events.OnsetS!.Value - 0.1));

        Assert.Equal(Value(found, MeasureNames.TimeToTakeOff) + 0.1, Value(set, MeasureNames.TimeToTakeOff), 1e-9);
        Assert.Equal(Value(found, MeasureNames.JumpHeight), Value(set, MeasureNames.JumpHeight), 1e-9);
    }

    [Fact]
    public void DropJump_FirstTouchDownSetLater_ContactTimeShortensByAsMuch()
    {
        var random = SeededRandom.For(20270104, 2);
        ForceRecording recording = Force(
            Plates.Record(
                DropJumps.Make(
                    new DropJumpSettings
                    {
                        BodyMassKg = 70,
                        SwayN = 2,
                        StandAfterS = 2.5,
                    },
                    random
                ),
                new PlateSettings { TwoPlates = true, RateHz = 1000 },
                random
            ),
            JumpTask.DropJump
        );
        Trial found = Measured(recording);

        Trial set = Measured(recording, (TrialEvent.FirstTouchDown, found.Events.FirstTouchDownS!.Value + 0.015));

        Assert.Equal(Value(found, MeasureNames.ContactTime) - 0.015, Value(set, MeasureNames.ContactTime), 1e-9);
    }

    [Fact]
    public void NothingSet_IsTheSameTrial()
    {
        ForceRecording recording = Countermovement();
        Trial found = Measured(recording);
        Trial set = Measured(recording, (TrialEvent.TakeOff, found.Events.TakeOffS!.Value));
        Assert.Equal(found.Find(MeasureNames.JumpHeight)!.Value, set.Find(MeasureNames.JumpHeight)!.Value, 1e-9);
    }

    [Theory]
    [InlineData(-30.0, "outside the recording")]
    [InlineData(double.NaN, "outside the recording")]
    [InlineData(double.PositiveInfinity, "outside the recording")]
    [InlineData(1.9, "outside the recording or far")]
    [InlineData(-0.6, "before the")]
    public void TakeOffSetWhereItCannotBe_IsRefusedWithASentence(double from, string says)
    {
        ForceRecording recording = Countermovement();
        Trial found = Measured(recording);
        var options = new MeasuringOptions
        {
            Corrections = [new EventCorrection(1, TrialEvent.TakeOff, found.Events.TakeOffS!.Value + from)],
        };

        Assert.False(Measuring.Of(recording, null, options).TryGet(out _, out Refusal? refusal));
        Assert.Contains(says, refusal.Sentence);
    }

    [Fact]
    public void EventsOfATrialThatIsNotThere_OrOfAnotherTask_AreRefused()
    {
        ForceRecording recording = Countermovement();
        var second = new MeasuringOptions { Corrections = [new EventCorrection(2, TrialEvent.TakeOff, 1)] };
        Assert.False(Measuring.Of(recording, null, second).TryGet(out _, out Refusal? noTrial));
        Assert.Contains("no trial 2", noTrial.Sentence);

        var first = new MeasuringOptions { Corrections = [new EventCorrection(1, TrialEvent.TakeOff, 1)] };
        Assert.False(Measuring.Of(recording, JumpTask.RepeatedHops, first).TryGet(out _, out Refusal? task));
        Assert.Contains("repeated-hops", task.Sentence);
    }

    private static Trial Measured(ForceRecording recording, params (TrialEvent Event, double AtS)[] set)
    {
        ImmutableArray<EventCorrection> corrections = [.. set.Select(s => new EventCorrection(1, s.Event, s.AtS))];
        return Assert.Single(
            Measuring.Of(recording, null, new MeasuringOptions { Corrections = corrections }).Require()
        );
    }

    private static double Value(Trial trial, string name) => trial.Find(name)!.Value;

    private static ForceRecording Countermovement()
    {
        var random = SeededRandom.For(20270104, 1);
        return Force(
            Plates.Record(
                CountermovementJumps.Make(
                    new CountermovementSettings
                    {
                        BodyMassKg = 70,
                        TakeOffVelocityMS = 2.6,
                        SwayN = 1,
                    },
                    random
                ),
                new PlateSettings { TwoPlates = true, RateHz = 1000 },
                random
            ),
            JumpTask.CountermovementJump
        );
    }

    private static ForceRecording Force(SimulatedRecording recording, JumpTask task) =>
        new(
            new RecordingLabels(Task: task),
            [],
            0,
            recording.Settings.RateHz,
            (double[])[.. recording.LeftN.Zip(recording.RightN, (l, r) => l + r)],
            recording.LeftN,
            recording.RightN
        );
}
