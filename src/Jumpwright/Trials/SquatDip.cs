using Jumpwright.Quantities;

namespace Jumpwright.Trials;

/// <summary>Squat jump: the deepest fall of force below weight before propulsion, % of weight. Reported, never a reason to refuse.</summary>
internal static class SquatDip
{
    private const double WarnedPct = 10;
    private const double WindowS = 0.6;

    public static void Measure(MeasureList into, Plate plate, FittedMotion motion, Push push)
    {
        int to = (int)push.Bottom.Sample;
        int from = push.Onset is { } onset ? (int)onset.Sample : to - (int)(WindowS * plate.RateHz);
        from = Math.Max(from, motion.Samples.From);
        // The dip lies before the push's main rise: look on to where the force last leaves the weight upwards.
        int end = to;
        double least = double.PositiveInfinity;
        int width = Math.Max((int)(0.005 * plate.RateHz), 1);
        for (int i = from; i + width <= end + width && i + width <= plate.ForceN.Length; i++)
        {
            double sum = 0;
            for (int j = i; j < i + width; j++)
            {
                sum += plate.ForceN[j];
            }

            least = Math.Min(least, sum / width);
        }

        double dip = double.IsInfinity(least) ? 0 : Math.Max(100 * (motion.WeightN - least) / motion.WeightN, 0);
        double u = 100 * PushMeasures.Quadrature(plate.Levels.NoiseN, motion.WeightUncertaintyN, 1) / motion.WeightN;
        into.Add(MeasureNames.UnwantedDip, dip, Unit.Percent, u, "least force before propulsion");
        if (dip > WarnedPct)
        {
            into.Warn(Cautions.UnwantedDip(dip));
        }
    }
}
