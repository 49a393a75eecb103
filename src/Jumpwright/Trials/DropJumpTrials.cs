using System.Collections.Immutable;
using Jumpwright.Mechanics;
using Jumpwright.Quantities;
using Jumpwright.Recordings;

namespace Jumpwright.Trials;

/// <summary>
/// Drop jumps: a fall onto the empty plate, a contact, a flight, a landing. The height fallen comes from the signal, by
/// backward integration from standing after the landing, never from the box (Baca 1999, Med Sci Sports Exerc 31:437–442; one
/// plate is enough: McMahon, Lake, Stratford and Comfort 2021, doi:10.3390/biomechanics1020015).
/// </summary>
internal static class DropJumpTrials
{
    private const double LongestContactS = 1.2;

    /// <summary>Slower than this is stepping onto the plate, m/s.</summary>
    private const double SlowestFallMS = 0.7;

    public static Outcome<ImmutableArray<Trial>> Of(Plate plate, ImmutableArray<EventCorrection> corrections)
    {
        var trials = ImmutableArray.CreateBuilder<Trial>();
        foreach ((int first, int last) in plate.Stays)
        {
            Contact contact = plate.Contacts[first];
            if (
                last == first
                || contact is not { TouchDown: { } touchDown, TakeOff: { } takeOff }
                || plate.Seconds(touchDown.Sample, takeOff.Sample) > LongestContactS
            )
            {
                continue;
            }

            List<QuietStanding> still = plate.Still(first, last);
            using FittedMotion? motion =
                still.Count > 0 ? plate.FitMotion(first, last, still, samePosture: true) : null;
            if (motion is not null && motion.VelocityAt(touchDown.Sample) > -SlowestFallMS)
            {
                continue;
            }

            int number = trials.Count + 1;
            var hand = HandSet.For(number, corrections, plate);
            Trial trial = Measure(
                plate,
                motion,
                hand.Of(contact, TrialEvent.FirstTouchDown, TrialEvent.TakeOff),
                hand.Of(plate.Contacts[first + 1], TrialEvent.TouchDown, null),
                number,
                hand
            );
            int bounces = last - first - 1;
            trials.Add(
                bounces > 0 ? trial with { Warnings = trial.Warnings.Add(Cautions.BouncesIgnored(bounces)) } : trial
            );
        }

        return trials.Count > 0 ? trials.ToImmutable() : Refusals.NoDropContact();
    }

    private static Trial Measure(
        Plate plate,
        FittedMotion? motion,
        Contact contact,
        Contact landing,
        int number,
        HandSet hand
    )
    {
        var list = new MeasureList();
        hand.Warn(list);
        Instant touchDown = contact.TouchDown!.Value;
        Instant takeOff = contact.TakeOff!.Value;
        Instant landed = landing.TouchDown ?? new Instant(landing.Samples.From, 0.002);
        double flightS = plate.Seconds(takeOff.Sample, landed.Sample);
        double flightU = PushMeasures.Quadrature(landed.UncertaintyS, takeOff.UncertaintyS);
        var events = new TrialEvents(
            TakeOffS: plate.TimeS(takeOff.Sample),
            TouchDownS: plate.TimeS(landed.Sample),
            FirstTouchDownS: plate.TimeS(touchDown.Sample)
        );

        (double contactS, double contactU) = PushMeasures.ContactTime(list, plate, touchDown, takeOff);
        PushMeasures.FlightTime(list, plate, takeOff, landed);
        if (motion is not null)
        {
            Weights.Add(list, plate, motion);
            PushMeasures.TakeOff(list, motion, takeOff);
            Falls.Add(list, plate, motion, touchDown);
            ImpossibleStart.Check(list, motion, contact);
        }
        else
        {
            list.Warn(Cautions.NeverStill);
        }

        Measure height = list.Find(MeasureNames.JumpHeight) ?? list.Find(MeasureNames.JumpHeightFlightTime)!;
        ReboundIndex.Add(list, height, contactS, contactU, takeOff.UncertaintyS);

        if (motion is not null && Rebound.Of(plate, motion, contact) is { } found)
        {
            Rebound rebound = found with { Bottom = hand.Or(TrialEvent.Bottom, found.Bottom)!.Value };
            events = events with { BottomS = plate.TimeS(rebound.Bottom.Sample) };
            double uBottom = rebound.Bottom.UncertaintyS;
            list.Add(
                MeasureNames.BrakingDuration,
                plate.Seconds(touchDown.Sample, rebound.Bottom.Sample),
                Unit.Second,
                PushMeasures.Quadrature(uBottom, touchDown.UncertaintyS),
                "touch-down to lowest point"
            );
            list.Add(
                MeasureNames.PropulsionDuration,
                plate.Seconds(rebound.Bottom.Sample, takeOff.Sample),
                Unit.Second,
                PushMeasures.Quadrature(uBottom, takeOff.UncertaintyS),
                "lowest point to take-off"
            );
            PushMeasures.Power(list, plate, motion, rebound.Bottom, takeOff);
            (double k, double ku) = rebound.Stiffness(plate, motion);
            list.Add(MeasureNames.VerticalStiffness, k, Unit.NewtonPerMetre, ku, "peak force over greatest fall");
            double lowest = rebound.Bottom.Sample;
            PushMeasures.AsymmetryOf(list, plate, MeasureNames.AsymmetryBrakingImpulse, touchDown.Sample, lowest);
            PushMeasures.AsymmetryOf(list, plate, MeasureNames.AsymmetryPropulsiveImpulse, lowest, takeOff.Sample);
        }

        if (motion is not null)
        {
            TimeModel.Add(
                list,
                motion.MassKg,
                motion.MassKg * motion.WeightUncertaintyN / motion.WeightN,
                contactS,
                contactU,
                flightS,
                flightU
            );
        }

        Leading.CheckPush(list, plate, touchDown);
        TouchedPlate.BeforeDrop(list, plate, touchDown, takeOff, landed);
        PushMeasures.PeakForce(list, plate, MeasureNames.PeakForce, (int)touchDown.Sample, (int)takeOff.Sample + 1);
        double? stable = Landing.Measure(list, plate, landed, landing.Samples.To, motion);
        events = events with { StableS = stable is { } s ? plate.TimeS(s) : null };
        if (motion is not null)
        {
            Agreement.Check(list, plate, motion, takeOff, landed);
        }

        return new Trial(number, JumpTask.DropJump, events, list.Measures, [], list.Warnings, list.Doubtful);
    }
}
