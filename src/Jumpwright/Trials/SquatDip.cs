using Jumpwright.Quantities;

namespace Jumpwright.Trials;

/// <summary>Squat jump: the deepest fall of force below weight before propulsion, % of weight. Reported, never a reason to refuse.</summary>
internal static class SquatDip
{
    private const double WarnedPct = 10;

    /// <summary>A dip before what was taken for the onset, this many times deeper than it is unsure, was the onset (house rule).</summary>
    private const double SureBy = 3;

    /// <summary>A dip belongs to the push that follows it at once; longer below the weight nobody dips, s (house rule).</summary>
    private const double LongestS = 0.6;

    /// <summary>An onset found in the rise lies at most so long after the dip's end, s (house rule).</summary>
    private const double RiseS = 0.1;

    /// <summary>The force is read in means over so long, s: shorter than any dip, longer than noise.</summary>
    private const double MeanS = 0.02;

    public static void Measure(MeasureList into, Plate plate, FittedMotion motion, Push push)
    {
        ReadOnlySpan<double> force = plate.ForceN;
        int bottom = (int)push.Bottom.Sample;
        int width = Math.Max((int)(MeanS * plate.RateHz), 1);
        int first = Math.Max(bottom - (int)(LongestS * plate.RateHz), motion.Samples.From);
        int onset = push.Onset is { } at ? Math.Clamp((int)at.Sample, motion.Samples.From, bottom) : first;
        double least = motion.WeightN;
        double early = motion.WeightN;
        // From where the push has begun back to the onset; and on, before it, through the fall below the weight that ends there: a shallow dip is no
        // onset, and what was found is the rise after it.
        int rise = onset - (int)(RiseS * plate.RateHz);
        bool below = false;
        for (int i = Math.Min(bottom, force.Length - width); i >= motion.Samples.From; i--)
        {
            double mean = ForceSums.Total(force.Slice(i, width)) / width;
            if (i < onset)
            {
                below |= mean < motion.WeightN;
                if (i < first || (mean >= motion.WeightN && (below || i < rise)))
                {
                    break;
                }

                early = Math.Min(early, mean);
            }

            least = Math.Min(least, mean);
        }

        double dip = 100 * (motion.WeightN - least) / motion.WeightN;
        // The deepest of many means is deeper than the dip by about as much as a mean is unsure; who sways is below the weight without any dip, by the trough of a wave.
        double noise = plate.Levels.NoiseN / Math.Sqrt(width);
        double trough = Math.Sqrt(2) * motion.SwayN;
        double u = 100 * PushMeasures.Quadrature(noise, motion.WeightUncertaintyN, trough) / motion.WeightN;
        into.Add(MeasureNames.UnwantedDip, dip, Unit.Percent, u, "least force before propulsion");
        if (100 * (motion.WeightN - early) / motion.WeightN > SureBy * u)
        {
            Sureness.OnsetAfterDip(into);
        }

        if (dip > WarnedPct)
        {
            into.Warn(Cautions.UnwantedDip(dip));
        }
    }
}
