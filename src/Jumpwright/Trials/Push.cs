using Jumpwright.Quantities;

namespace Jumpwright.Trials;

/// <summary>
/// The push of one jump off the plate, from its motion: phases after McMahon et al. 2018 (Strength Cond J 40(4):96–106,
/// doi:10.1519/SSC.0000000000000375; boundaries from memory). Unweighting ends at peak downward velocity, braking at the
/// lowest point (velocity zero), propulsion at take-off.
/// </summary>
/// <param name="TakeOff">Take-off.</param>
/// <param name="Onset">First instant of the movement; null where nobody stood still before it.</param>
/// <param name="PeakDown">Peak downward velocity; null without a fall.</param>
/// <param name="Bottom">Lowest point, or the start of the rise where there is no fall.</param>
/// <param name="Quiet">Still stretch before; null where there is none.</param>
internal sealed record Push(Instant TakeOff, Instant? Onset, Instant? PeakDown, Instant Bottom, QuietStanding? Quiet)
{
    /// <summary>A slower fall than this is sway, m/s.</summary>
    private const double FallMS = 0.1;

    /// <summary>A smaller dip of the force before a push out of a held squat is sway, part of the weight.</summary>
    private const double DipPart = 0.03;

    /// <summary>Finds the phases of the push that ends a contact.</summary>
    public static Push Of(Plate plate, FittedMotion motion, Contact contact, IReadOnlyList<QuietStanding> still)
    {
        Instant takeOff = contact.TakeOff ?? new Instant(contact.Samples.To, 0.01);
        int offset = motion.Samples.From;
        int end = Math.Min((int)takeOff.Sample, motion.Samples.To - 1);
        int start = contact.Samples.From;
        QuietStanding? quiet = null;
        foreach (QuietStanding q in still)
        {
            if (q.Samples.From >= start && q.Samples.From < end)
            {
                quiet = q;
            }
        }

        int from = Math.Max(quiet is { } last ? last.Samples.From + (last.Samples.Length / 2) : start, start);
        ReadOnlySpan<double> v = motion.VelocityMS;

        // The lowest point is the last time before take-off at which the velocity rises through zero.
        int bottom = end;
        while (bottom > from && v[bottom - offset] > 0)
        {
            bottom--;
        }

        double v0 = v[bottom - offset];
        double v1 = v[Math.Min(bottom + 1 - offset, v.Length - 1)];
        double bottomAt = bottom + (v1 > v0 ? Math.Clamp(-v0 / (v1 - v0), 0, 1) : 0);
        double acceleration = Math.Max((plate.ForceN[bottom] / motion.MassKg) - Gravity.MetresPerSecondSquared, 1);
        double bottomU = Math.Min(motion.VelocityUncertaintyAt(bottomAt) / acceleration, 0.03);

        // The fall before it: down to the least velocity, back to where the fall began.
        int fall = bottom;
        int peakDown = bottom;
        while (fall > from && v[fall - offset] < FallMS / 5)
        {
            if (v[fall - offset] < v[peakDown - offset])
            {
                peakDown = fall;
            }

            fall--;
        }

        bool fell = v[peakDown - offset] < -FallMS;
        Instant? down = fell ? PeakDownAt(plate, motion, peakDown) : null;

        Instant? onset = null;
        if (quiet is { } band)
        {
            int moving = fell ? Least(plate.ForceN, fall, peakDown) : Greatest(plate.ForceN, bottom, end);
            (double mean, double deviation) = LastSecond(plate, band, moving);
            onset = OnsetDetection.Before(plate.ForceN, plate.RateHz, moving, start, mean, deviation);
        }

        var lowest = new Instant(bottomAt, bottomU);
        if (!fell && onset is { } begun)
        {
            // Out of a held squat the velocity leaves zero with the push itself; before it there is only sway, so that its
            // start is no surer than the onset's. Without a dip between the two the push begins at the onset, whatever the sway.
            double later = Math.Max((bottomAt - begun.Sample) / plate.RateHz, 0);
            lowest =
                later <= 0 || !Dips(plate, motion, (int)begun.Sample, bottom)
                    ? begun
                    : lowest with
                    {
                        UncertaintyS = Math.Max(PushMeasures.Quadrature(bottomU, later / 2), begun.UncertaintyS),
                    };
        }

        return new Push(takeOff, onset, down, lowest, quiet);
    }

    /// <summary>Whether the force falls below the weight for a moment between two samples.</summary>
    private static bool Dips(Plate plate, FittedMotion motion, int from, int to)
    {
        int width = Math.Max((int)(0.02 * plate.RateHz), 2);
        for (int i = Math.Max(from, 0); i + width <= Math.Min(to + width, plate.ForceN.Length); i += width)
        {
            double sum = 0;
            foreach (double f in plate.ForceN.Slice(i, width))
            {
                sum += f;
            }

            if (sum / width < (1 - DipPart) * motion.WeightN)
            {
                return true;
            }
        }

        return false;
    }

    private static Instant PeakDownAt(Plate plate, FittedMotion motion, int sample)
    {
        // Velocity turns where the force is back at weight; noise moves that crossing by noise over slope.
        int span = Math.Max((int)(0.01 * plate.RateHz), 2);
        int a = Math.Max(sample - span, 0);
        int b = Math.Min(sample + span, plate.ForceN.Length - 1);
        double n = 0;
        double sk = 0;
        double sf = 0;
        double skk = 0;
        double skf = 0;
        for (int i = a; i <= b; i++)
        {
            double k = i - sample;
            double f = plate.ForceN[i] - motion.WeightN;
            n++;
            sk += k;
            sf += f;
            skk += k * k;
            skf += k * f;
        }

        double slope = ((n * skf) - (sk * sf)) / ((n * skk) - (sk * sk));
        double at = slope > 0 ? Math.Clamp(-((sf - (slope * sk)) / n) / slope, -span, span) : 0;
        double off = Math.Sqrt(
            (motion.WeightUncertaintyN * motion.WeightUncertaintyN)
                + (plate.Levels.NoiseN * plate.Levels.NoiseN / n)
                + 9
        );
        return new Instant(sample + at, Math.Min(off / Math.Max(slope * plate.RateHz, 200), 0.03));
    }

    private static (double Mean, double Deviation) LastSecond(Plate plate, QuietStanding quiet, int before)
    {
        int to = Math.Min(quiet.Samples.To, before);
        int from = Math.Max(quiet.Samples.From, to - (int)plate.RateHz);
        // Its very end may already hold the first of the movement.
        to -= Math.Min((to - from) / 4, (int)(0.05 * plate.RateHz));
        if (to - from < 8)
        {
            return (quiet.MeanN, quiet.SampleDeviationN);
        }

        ReadOnlySpan<double> still = plate.ForceN.Slice(from, to - from);
        double mean = ForceSums.Total(still) / still.Length;
        return (mean, Math.Sqrt(ForceSums.Squares(still, mean) / (still.Length - 1)));
    }

    private static int Least(ReadOnlySpan<double> forceN, int from, int to)
    {
        ReadOnlySpan<double> some = forceN[from..Math.Max(to + 1, from + 1)];
        return from + Math.Max(some.IndexOf(Samples.Least(some)), 0);
    }

    private static int Greatest(ReadOnlySpan<double> forceN, int from, int to)
    {
        ReadOnlySpan<double> some = forceN[from..Math.Max(to + 1, from + 1)];
        return from + Math.Max(some.IndexOf(Samples.Greatest(some)), 0);
    }
}
