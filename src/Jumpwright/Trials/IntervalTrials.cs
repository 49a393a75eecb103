using System.Collections.Immutable;
using Jumpwright.Mechanics;
using Jumpwright.Quantities;
using Jumpwright.Recordings;

namespace Jumpwright.Trials;

/// <summary>What contact and flight times alone can tell: flight-time heights, contact times, indices. No force, no impulse.</summary>
internal static class IntervalTrials
{
    private const double G = Gravity.MetresPerSecondSquared;
    private const double LongestDropContactS = 1.2;
    private const double BounceContactS = 0.5;
    private const double BouncePart = 0.7;

    public static Outcome<ImmutableArray<Trial>> Of(IntervalRecording recording, JumpTask task) =>
        task switch
        {
            JumpTask.CountermovementJump or JumpTask.SquatJump or JumpTask.LoadedJump or JumpTask.ApproachJump =>
                Flights(recording, task),
            JumpTask.DropJump => Drops(recording),
            JumpTask.RepeatedHops => Series(recording),
            _ => Refusals.TaskNeedsForce(task.Id()),
        };

    private static string Timing(IntervalRecording recording) =>
        recording.FramesPerSecond is { } rate ? $"frames at {rate:0.###} per second" : "contact mat";

    private static Outcome<ImmutableArray<Trial>> Flights(IntervalRecording recording, JumpTask task)
    {
        var trials = ImmutableArray.CreateBuilder<Trial>();
        double u = recording.IntervalStandardUncertaintyS;
        double clock = recording.StartS;
        double previous = 0;
        for (int i = 0; i < recording.Intervals.Length; i++)
        {
            ContactFlight row = recording.Intervals[i];
            clock += row.ContactS ?? 0;
            double takeOff = clock;
            if (row.FlightS is not { } flight)
            {
                continue;
            }

            clock += flight;
            if (trials.Count > 0 && row.ContactS < BounceContactS && flight < BouncePart * previous)
            {
                trials[^1] = trials[^1] with { Warnings = trials[^1].Warnings.Add(Cautions.BouncesIgnored(1)) };
                continue;
            }

            previous = flight;
            var list = new MeasureList();
            AddFlight(list, flight, u, Timing(recording));
            Sureness.OfTimer(list);
            var events = new TrialEvents(TakeOffS: takeOff, TouchDownS: clock);
            trials.Add(new Trial(trials.Count + 1, task, events, list.Measures, [], list.Warnings, list.Doubtful));
        }

        return trials.Count > 0 ? trials.ToImmutable() : Refusals.NoCompleteInterval();
    }

    private static Outcome<ImmutableArray<Trial>> Drops(IntervalRecording recording)
    {
        var trials = ImmutableArray.CreateBuilder<Trial>();
        double u = recording.IntervalStandardUncertaintyS;
        double clock = recording.StartS;
        double previous = 0;
        foreach (ContactFlight row in recording.Intervals)
        {
            double touchDown = clock;
            clock += (row.ContactS ?? 0) + (row.FlightS ?? 0);
            if (
                row is not { ContactS: { } contact, FlightS: { } flight }
                || contact > LongestDropContactS
                || flight < BouncePart * previous
            )
            {
                continue;
            }

            previous = flight;
            var list = new MeasureList();
            AddFlight(list, flight, u, Timing(recording));
            list.Add(MeasureNames.ContactTime, contact, Unit.Second, u, Timing(recording));
            Sureness.OfTimer(list);
            HopContact rebound = Hops.Of(contact, flight);
            list.Add(
                MeasureNames.ReactiveStrengthIndex,
                rebound.ReactiveStrengthIndex,
                Unit.MetrePerSecond,
                ReboundIndex.UncertaintyOf(rebound, u, u),
                PushMeasures.ByFlightTime
            );
            if (Mass(recording) is var (kg, massU))
            {
                TimeModel.Add(list, kg, massU, contact, u, flight, u);
            }

            var events = new TrialEvents(
                FirstTouchDownS: touchDown,
                TakeOffS: touchDown + contact,
                TouchDownS: touchDown + contact + flight
            );
            trials.Add(
                new Trial(trials.Count + 1, JumpTask.DropJump, events, list.Measures, [], list.Warnings, list.Doubtful)
            );
        }

        return trials.Count > 0 ? trials.ToImmutable() : Refusals.NoDropContact();
    }

    private static Outcome<ImmutableArray<Trial>> Series(IntervalRecording recording)
    {
        double u = recording.IntervalStandardUncertaintyS;
        var hops = new List<HopContact>();
        foreach (ContactFlight row in recording.Intervals)
        {
            if (row is { ContactS: { } contact, FlightS: { } flight })
            {
                hops.Add(Hops.Of(contact, flight));
            }
        }

        if (hops.Count == 0)
        {
            return Refusals.NoCompleteHop();
        }

        var list = new MeasureList();
        HopMeans.Add(list, hops, [.. hops.Select(_ => (u, u))], Timing(recording), Mass(recording));
        Sureness.OfTimer(list);
        return ImmutableArray.Create(
            new Trial(
                1,
                JumpTask.RepeatedHops,
                new TrialEvents(),
                list.Measures,
                [.. hops],
                list.Warnings,
                list.Doubtful
            )
        );
    }

    private static void AddFlight(MeasureList list, double flight, double u, string timing)
    {
        list.Add(MeasureNames.FlightTime, flight, Unit.Second, u, timing);
        list.Add(
            MeasureNames.JumpHeightFlightTime,
            Flight.HeightFromTimeM(flight),
            Unit.Metre,
            G * flight / 4 * u,
            PushMeasures.ByFlightTime
        );
    }

    /// <summary>The mass a person wrote down; bathroom scales and a meal make it no surer than 1 %.</summary>
    private static (double Kg, double U)? Mass(IntervalRecording recording) =>
        recording.Labels.BodyMassKg is { } kg ? (kg + (recording.Labels.ExternalLoadKg ?? 0), 0.01 * kg) : null;
}
