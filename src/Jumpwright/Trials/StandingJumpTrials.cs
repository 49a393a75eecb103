using System.Collections.Immutable;
using Jumpwright.Quantities;
using Jumpwright.Recordings;

namespace Jumpwright.Trials;

/// <summary>Jumps from standing on the plate: countermovement jump, squat jump, and the same with a load.</summary>
internal static class StandingJumpTrials
{
    /// <summary>On the plate for a shorter time since the last landing, and for a smaller flight, is a bounce.</summary>
    private const double BounceContactS = 0.5;

    private const double LikelyBounceContactS = 1.0;
    private const double LikelyBouncePart = 0.7;

    /// <summary>A take-off slower than this is a step, m/s.</summary>
    private const double SlowestJumpMS = 0.45;

    private const double SlowestOffPlateMS = 0.9;

    /// <summary>Back on the plate sooner nobody stood on a box, s.</summary>
    private const double LeastOnBoxS = 0.35;

    public static Outcome<ImmutableArray<Trial>> Of(
        Plate plate,
        JumpTask task,
        ImmutableArray<EventCorrection> corrections
    )
    {
        var trials = ImmutableArray.CreateBuilder<Trial>();
        bool anyFlight = false;
        bool anyStill = false;
        foreach ((int first, int last) in plate.Stays)
        {
            List<QuietStanding> still = plate.Still(first, last);
            anyStill |= still.Count > 0;
            anyFlight |= last > first;
            using FittedMotion? motion =
                still.Count > 0 ? plate.FitMotion(first, last, still, samePosture: task != JumpTask.SquatJump) : null;

            double previousFlight = 0;
            int landed = -1;
            int bounces = 0;
            int hops = 0;
            for (int k = first; k <= last; k++)
            {
                Contact contact = plate.Contacts[k];
                if (contact.TakeOff is not { } takeOff)
                {
                    continue;
                }

                Contact? landing = k < last && task != JumpTask.BoxJump ? plate.Contacts[k + 1] : null;
                double flight = landing?.TouchDown is { } down ? plate.Seconds(takeOff.Sample, down.Sample) : 0;
                if (k == landed && IsBounce(plate, contact, flight, previousFlight))
                {
                    bounces++;
                    landed = k + 1;
                    continue;
                }

                if (task == JumpTask.BoxJump && IsHopBefore(plate, k, last))
                {
                    hops++;
                    continue;
                }

                if (!IsJump(plate, motion, contact, landing))
                {
                    continue;
                }

                previousFlight = flight;
                landed = k + 1;
                int number = trials.Count + 1;
                var hand = HandSet.For(number, corrections, plate);
                trials.Add(
                    Measure(
                        plate,
                        motion,
                        still,
                        hand.Of(contact, null, TrialEvent.TakeOff),
                        landing is null ? null : hand.Of(landing, TrialEvent.TouchDown, null),
                        task,
                        number,
                        hand
                    )
                );
            }

            if (bounces > 0 && trials.Count > 0)
            {
                Trial before = trials[^1];
                trials[^1] = before with { Warnings = before.Warnings.Add(Cautions.BouncesIgnored(bounces)) };
            }

            if (hops > 0 && trials.Count > 0)
            {
                Trial after = trials[^1];
                trials[^1] = after with { Warnings = after.Warnings.Add(Cautions.HopsIgnored(hops)) };
            }
        }

        if (trials.Count > 0)
        {
            return trials.ToImmutable();
        }

        return anyFlight || plate.Levels.WasEmpty ? (anyStill ? Refusals.NoJump() : Refusals.NeverStillNoFlight())
            : anyStill ? Refusals.NeverLeavesPlate()
            : Refusals.NeverStillNoFlight();
    }

    private static bool IsBounce(Plate plate, Contact contact, double flight, double previous)
    {
        double seconds = plate.Seconds(
            contact.TouchDown?.Sample ?? contact.Samples.From,
            contact.TakeOff?.Sample ?? contact.Samples.To
        );
        return seconds < BounceContactS || (seconds < LikelyBounceContactS && flight < LikelyBouncePart * previous);
    }

    /// <summary>Whether somebody who leaves the plate later is back on it so soon that this take-off led to no box.</summary>
    private static bool IsHopBefore(Plate plate, int contact, int last) =>
        contact < last
        && plate.Contacts[last].TakeOff is not null
        && plate.Contacts[contact].TakeOff is { } takeOff
        && plate.Contacts[contact + 1].TouchDown is { } down
        && plate.Seconds(takeOff.Sample, down.Sample) < LeastOnBoxS;

    private static bool IsJump(Plate plate, FittedMotion? motion, Contact contact, Contact? landing)
    {
        if (contact.TakeOff is not { } takeOff)
        {
            return false;
        }

        if (motion is null)
        {
            return landing is not null && PeakBefore(plate, contact) > 1.15 * plate.Levels.LoadN;
        }

        double v = motion.VelocityAt(takeOff.Sample);
        return landing is not null
            ? v > SlowestJumpMS - (2 * motion.VelocityUncertaintyAt(takeOff.Sample))
                && PeakBefore(plate, contact) > 1.1 * motion.WeightN
            : v > SlowestOffPlateMS && PeakBefore(plate, contact) > 1.2 * motion.WeightN;
    }

    private static double PeakBefore(Plate plate, Contact contact)
    {
        int from = Math.Max(contact.Samples.From, contact.Samples.To - (int)(0.6 * plate.RateHz));
        return Math.Max(Samples.Greatest(plate.ForceN.Slice(from, contact.Samples.To - from)), 0);
    }

    private static Trial Measure(
        Plate plate,
        FittedMotion? motion,
        List<QuietStanding> still,
        Contact contact,
        Contact? landing,
        JumpTask task,
        int number,
        HandSet hand
    )
    {
        var list = new MeasureList();
        hand.Warn(list);
        Instant takeOff = contact.TakeOff!.Value;
        Instant? touchDown = landing?.TouchDown;
        var events = new TrialEvents(TakeOffS: plate.TimeS(takeOff.Sample));
        Push? push = null;
        if (motion is not null)
        {
            Weights.Add(list, plate, motion, task);
            UnlikeStands.Check(list, plate, motion, still);
            ImpossibleStart.Check(list, motion, contact);
            ImpossibleRise.Check(list, motion, takeOff, fromSquat: task == JumpTask.SquatJump);
            PushMeasures.TakeOff(list, motion, takeOff);
            Push found = Push.Of(plate, motion, contact, still);
            push = found with
            {
                Onset = hand.Or(TrialEvent.Onset, found.Onset),
                PeakDown = hand.Or(TrialEvent.PeakDownwardVelocity, found.PeakDown),
                Bottom = hand.Or(TrialEvent.Bottom, found.Bottom)!.Value,
            };
        }
        else
        {
            list.Warn(Cautions.NeverStill);
        }

        if (touchDown is { } down)
        {
            PushMeasures.FlightTime(list, plate, takeOff, down);
            events = events with { TouchDownS = plate.TimeS(down.Sample) };
        }
        else
        {
            list.Warn(Cautions.LeavesPlate);
            if (motion is not null)
            {
                Weights.CheckWithoutLanding(list, plate, motion);
            }
        }

        if (push is not null && motion is not null)
        {
            PushMeasures.Phases(list, plate, motion, push, countermovement: task != JumpTask.SquatJump);
            events = events with
            {
                OnsetS = push.Onset is { } onset ? plate.TimeS(onset.Sample) : null,
                PeakDownwardVelocityS = push.PeakDown is { } peak ? plate.TimeS(peak.Sample) : null,
                BottomS = plate.TimeS(push.Bottom.Sample),
            };
            if (push.Onset is null)
            {
                list.Warn(Cautions.NoOnset);
            }

            if (task != JumpTask.SquatJump)
            {
                Sureness.OfOnset(list, squat: false);
            }

            if (task == JumpTask.SquatJump)
            {
                SquatDip.Measure(list, plate, motion, push);
                Sureness.OfOnset(list, squat: true);
            }
            else if (push.PeakDown is null)
            {
                list.Warn(Cautions.NoCountermovement);
            }
        }

        if (touchDown is { } landed && landing is not null)
        {
            int end = landing.Samples.To;
            double? stable = Landing.Measure(list, plate, landed, end, motion);
            events = events with { StableS = stable is { } s ? plate.TimeS(s) : null };
            if (motion is not null)
            {
                Agreement.Check(list, plate, motion, takeOff, landed);
            }
        }

        return new Trial(number, task, events, list.Measures, [], list.Warnings, list.Doubtful);
    }
}
