using System.Collections.Immutable;
using Jumpwright.Mechanics;
using Jumpwright.Quantities;
using Jumpwright.Recordings;

namespace Jumpwright.Trials;

/// <summary>Drop landings: a fall onto the empty plate, a landing, and (two-footed) standing still.</summary>
internal static class LandingTrials
{
    private const double SlowestFallMS = 0.7;

    /// <summary>Without a weighing, a landing shows by a peak this far above the usual load.</summary>
    private const double LandingPart = 1.3;

    public static Outcome<ImmutableArray<Trial>> Of(Plate plate)
    {
        var trials = ImmutableArray.CreateBuilder<Trial>();
        foreach ((int first, int last) in plate.Stays)
        {
            if (plate.Contacts[first].TouchDown is not { } touchDown)
            {
                continue;
            }

            List<QuietStanding> still = plate.Still(first, last);
            using FittedMotion? motion =
                still.Count > 0 ? plate.FitMotion(first, last, still, samePosture: false) : null;
            int end = plate.Contacts[last].Samples.To;
            bool fell = motion is not null
                ? motion.VelocityAt(touchDown.Sample) < -SlowestFallMS
                : Peak(plate, plate.Contacts[first].Samples) > LandingPart * plate.Levels.LoadN
                    || plate.Contacts[first].Samples.Length < plate.RateHz;
            if (fell)
            {
                trials.Add(Measure(plate, motion, plate.Contacts[first], end, last - first, trials.Count + 1));
            }
        }

        return trials.Count > 0 ? trials.ToImmutable() : Refusals.NoLanding();
    }

    private static double Peak(Plate plate, Stretch samples)
    {
        double peak = 0;
        foreach (double f in plate.ForceN.Slice(samples.From, samples.Length))
        {
            peak = Math.Max(peak, f);
        }

        return peak;
    }

    private static Trial Measure(Plate plate, FittedMotion? motion, Contact landing, int end, int bounces, int number)
    {
        Instant touchDown = landing.TouchDown!.Value;
        var list = new MeasureList();
        if (motion is not null)
        {
            Weights.Add(list, plate, motion);
            Falls.Add(list, plate, motion, touchDown);
            ImpossibleStart.Check(list, motion, landing);
        }
        else
        {
            list.Warn(Cautions.NeverStillLanding);
            Leading.Check(list, plate, touchDown);
        }

        if (bounces > 0)
        {
            list.Warn(Cautions.BouncesIgnored(bounces));
        }

        double? stable = Landing.Measure(list, plate, touchDown, end, motion);
        var events = new TrialEvents(
            TouchDownS: plate.TimeS(touchDown.Sample),
            StableS: stable is { } s ? plate.TimeS(s) : null
        );
        return new Trial(number, JumpTask.DropLanding, events, list.Measures, [], list.Warnings, list.Doubtful);
    }
}
