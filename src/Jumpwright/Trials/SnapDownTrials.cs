using System.Collections.Immutable;
using Jumpwright.Quantities;
using Jumpwright.Recordings;

namespace Jumpwright.Trials;

/// <summary>
/// Snap-downs: from standing tall the athlete pulls down fast and catches in a landing stance. The plate is nearly or wholly
/// unloaded in between; the landing begins where the force comes back.
/// </summary>
internal static class SnapDownTrials
{
    /// <summary>Force below this part of the weight is a fall.</summary>
    private const double FallPart = 0.5;

    /// <summary>A catch shows above the weight by this much.</summary>
    private const double CatchPart = 1.15;

    private const double CatchWithinS = 0.6;
    private const double ApartS = 1.0;

    public static Outcome<ImmutableArray<Trial>> Of(Plate plate)
    {
        var trials = ImmutableArray.CreateBuilder<Trial>();
        bool anyStill = false;
        foreach ((int first, int last) in plate.Stays)
        {
            List<QuietStanding> still = plate.Still(first, last);
            if (still.Count == 0)
            {
                continue;
            }

            anyStill = true;
            using FittedMotion motion = plate.FitMotion(first, last, still, samePosture: false);
            List<(int Fall, int Catch)> found = Find(motion);
            for (int k = 0; k < found.Count; k++)
            {
                int end =
                    k + 1 < found.Count
                        ? motion.Samples.From + found[k + 1].Fall - (int)(0.3 * plate.RateHz)
                        : motion.Samples.To;
                trials.Add(Measure(plate, motion, still, first, last, found[k], end, trials.Count + 1));
            }
        }

        return trials.Count > 0 ? trials.ToImmutable()
            : anyStill ? Refusals.NoSnapDown()
            : Refusals.NeverStillNoFlight();
    }

    private static List<(int Fall, int Catch)> Find(FittedMotion motion)
    {
        var found = new List<(int, int)>();
        ReadOnlySpan<double> force = motion.ForceN;
        double rate = motion.RateHz;
        int next = 0;
        for (int i = 0; i < force.Length; i++)
        {
            if (i < next || force[i] > FallPart * motion.WeightN)
            {
                continue;
            }

            int until = Math.Min(i + (int)(CatchWithinS * rate), force.Length);
            int crossing = i;
            while (crossing < until && force[crossing] <= FallPart * motion.WeightN)
            {
                crossing++;
            }

            double peak = 0;
            for (int k = crossing; k < until; k++)
            {
                peak = Math.Max(peak, force[k]);
            }

            if (peak > CatchPart * motion.WeightN)
            {
                found.Add((i, crossing));
                next = crossing + (int)(ApartS * rate);
            }
            else
            {
                next = until;
            }
        }

        return found;
    }

    private static Trial Measure(
        Plate plate,
        FittedMotion motion,
        List<QuietStanding> still,
        int first,
        int last,
        (int Fall, int Catch) found,
        int end,
        int number
    )
    {
        var list = new MeasureList();
        Weights.Add(list, plate, motion);
        int fall = motion.Samples.From + found.Fall;
        int caught = motion.Samples.From + found.Catch;

        // With a flight the touch-down is its end; without one, the instant at which the force begins to come back.
        Instant? touch = null;
        for (int k = first + 1; k <= last; k++)
        {
            if (plate.Contacts[k].TouchDown is { } down && down.Sample > fall - 1 && down.Sample < caught + 1)
            {
                touch = down;
            }
        }

        int least = fall;
        for (int i = fall; i < caught; i++)
        {
            least = plate.ForceN[i] <= plate.ForceN[least] ? i : least;
        }

        Instant touchDown = touch ?? new Instant(least, 0.01);
        if (touch is null)
        {
            list.Warn(Cautions.FeetStayDown);
        }

        double? stable = Landing.Measure(list, plate, touchDown, end, motion);
        QuietStanding? before = still.Where(q => q.Samples.From < fall).Cast<QuietStanding?>().LastOrDefault();
        Instant? onset = before is { } quiet
            ? OnsetDetection.Before(
                plate.ForceN,
                plate.RateHz,
                fall,
                quiet.Samples.From,
                quiet.MeanN,
                quiet.SampleDeviationN
            )
            : null;
        var events = new TrialEvents(
            OnsetS: onset is { } o ? plate.TimeS(o.Sample) : null,
            TouchDownS: plate.TimeS(touchDown.Sample),
            StableS: stable is { } s ? plate.TimeS(s) : null
        );
        return new Trial(number, JumpTask.SnapDown, events, list.Measures, [], list.Warnings, list.Doubtful);
    }
}
