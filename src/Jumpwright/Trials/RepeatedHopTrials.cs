using System.Collections.Immutable;
using Jumpwright.Mechanics;
using Jumpwright.Quantities;
using Jumpwright.Recordings;

namespace Jumpwright.Trials;

/// <summary>Repeated hops on plates: every complete contact with its flight, and the means over the best five.</summary>
internal static class RepeatedHopTrials
{
    /// <summary>Longer on the plate is standing between two series.</summary>
    private const double StandingS = 1.5;

    public static Outcome<ImmutableArray<Trial>> Of(Plate plate)
    {
        var trials = ImmutableArray.CreateBuilder<Trial>();
        foreach ((int first, int last) in plate.Stays)
        {
            List<QuietStanding>? still = null;
            FittedMotion? motion = null;
            int from = -1;
            for (int k = first; k <= last; k++)
            {
                Contact contact = plate.Contacts[k];
                bool complete =
                    k < last
                    && contact is { TouchDown: { } down, TakeOff: { } up }
                    && plate.Seconds(down.Sample, up.Sample) < StandingS;
                if (complete)
                {
                    from = from < 0 ? k : from;
                    continue;
                }

                if (from >= 0)
                {
                    if (still is null)
                    {
                        still = plate.Still(first, last);
                        motion = still.Count > 0 ? plate.FitMotion(first, last, still, samePosture: true) : null;
                    }

                    trials.Add(Measure(plate, motion, still, from, k, trials.Count + 1));
                    from = -1;
                }
            }

            motion?.Dispose();
        }

        return trials.Count > 0 ? trials.ToImmutable() : Refusals.NoCompleteHop();
    }

    /// <summary>Measures the hops whose contacts run from one index up to, not including, another: the last landing.</summary>
    private static Trial Measure(
        Plate plate,
        FittedMotion? motion,
        List<QuietStanding> still,
        int from,
        int to,
        int number
    )
    {
        var list = new MeasureList();
        var hops = new List<HopContact>(to - from);
        var doubts = new List<(double, double)>(to - from);
        var ringing = new List<int>();
        for (int k = from; k < to; k++)
        {
            Instant down = plate.Contacts[k].TouchDown!.Value;
            Instant up = plate.Contacts[k].TakeOff!.Value;
            Instant next = plate.Contacts[k + 1].TouchDown!.Value;
            TouchedPlate.InFlight(list, plate, up, next);
            hops.Add(Hops.Of(plate.Seconds(down.Sample, up.Sample), plate.Seconds(up.Sample, next.Sample)));
            if (down.Unsettled || up.Unsettled || next.Unsettled)
            {
                ringing.Add(k - from);
            }

            doubts.Add(
                (
                    PushMeasures.Quadrature(down.UncertaintyS, up.UncertaintyS),
                    PushMeasures.Quadrature(up.UncertaintyS, next.UncertaintyS)
                )
            );
        }

        (double, double)? mass = motion is null
            ? null
            : (motion.MassKg, motion.MassKg * motion.WeightUncertaintyN / motion.WeightN);
        if (motion is null)
        {
            list.Warn(Cautions.NeverStill);
        }
        else
        {
            Weights.Add(list, plate, motion);
            UnlikeStands.Check(list, plate, motion, still);
            UnlikeStands.CheckTimes(list, plate, motion);
            ImpossibleStart.Check(list, motion, plate.Contacts[from]);
        }

        ImmutableArray<int> counted = HopMeans.Add(list, hops, doubts, "force-threshold", mass);
        Sureness.OfHops(list);
        NameRinging(list, ringing, counted);
        Forces(list, plate, motion, from, counted);
        Contact landing = plate.Contacts[to];
        Instant touchDown = landing.TouchDown!.Value;
        double? stable = Landing.Measure(list, plate, touchDown, landing.Samples.To, motion);
        var events = new TrialEvents(
            FirstTouchDownS: plate.TimeS(plate.Contacts[from].TouchDown!.Value.Sample),
            TakeOffS: plate.TimeS(plate.Contacts[to - 1].TakeOff!.Value.Sample),
            TouchDownS: plate.TimeS(touchDown.Sample),
            StableS: stable is { } s ? plate.TimeS(s) : null
        );
        return new Trial(number, JumpTask.RepeatedHops, events, list.Measures, [.. hops], list.Warnings, list.Doubtful);
    }

    /// <summary>Contacts and flights that begin or end where the plate rings: named, and the means doubtful if they are among them.</summary>
    private static void NameRinging(MeasureList list, List<int> ringing, ImmutableArray<int> counted)
    {
        if (ringing.Count == 0)
        {
            return;
        }

        list.Warn(Cautions.HopsRinging(string.Join(", ", ringing.Select(hop => hop + 1))));
        if (ringing.Any(hop => counted.Contains(hop)))
        {
            list.Doubt(
                Cautions.Ringing,
                MeasureNames.ContactTime,
                MeasureNames.FlightTime,
                MeasureNames.JumpHeightFlightTime,
                MeasureNames.ReactiveStrengthIndex,
                MeasureNames.VerticalStiffnessTimeModel
            );
        }
    }

    private static void Forces(
        MeasureList list,
        Plate plate,
        FittedMotion? motion,
        int from,
        ImmutableArray<int> counted
    )
    {
        double peak = 0;
        double stiffness = 0;
        double stiffnessU = 0;
        double height = 0;
        double heightU = 0;
        int springs = 0;
        foreach (int i in counted)
        {
            Contact contact = plate.Contacts[from + i];
            for (int s = contact.Samples.From; s < contact.Samples.To; s++)
            {
                peak = Math.Max(peak, plate.ForceN[s]);
            }

            if (motion is null || Rebound.Of(plate, motion, contact) is not { } rebound)
            {
                continue;
            }

            (double k, double ku) = rebound.Stiffness(plate, motion);
            double v = motion.VelocityAt(rebound.TakeOff.Sample);
            springs++;
            stiffness += k;
            stiffnessU += ku;
            height += Flight.HeightFromVelocityM(v);
            heightU +=
                Math.Abs(v)
                / Gravity.MetresPerSecondSquared
                * PushMeasures.TakeOffVelocityUncertainty(motion, rebound.TakeOff);
        }

        if (counted.Length == 0)
        {
            return;
        }

        list.Add(
            MeasureNames.PeakForce,
            peak,
            Unit.Newton,
            PushMeasures.Quadrature(1.5 * plate.Levels.NoiseN, plate.Empty.ZeroUncertaintyN, 0.002 * peak),
            "largest sample"
        );
        if (springs == counted.Length)
        {
            // The motion's error is shared by all hops of the series, so it does not shrink in the mean.
            list.Add(
                MeasureNames.VerticalStiffness,
                stiffness / springs,
                Unit.NewtonPerMetre,
                stiffnessU / springs,
                "peak force over greatest fall"
            );
            list.Add(MeasureNames.JumpHeight, height / springs, Unit.Metre, heightU / springs, PushMeasures.ByImpulse);
        }
    }
}
