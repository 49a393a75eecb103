using Jumpwright.Quantities;

namespace Jumpwright.Trials;

/// <summary>What follows the last touch-down: peak force, loading rate, and the time until the force stays within 5 % of the weight.</summary>
internal static class Landing
{
    private const double BandPart = 0.05;
    private const double StandingS = 1;

    /// <summary>What the force may be off by beside all that is known of it, N.</summary>
    private const double EdgeN = 0.3;

    /// <summary>A time to stabilisation that hangs on which of two swings was the last is not decided from, s.</summary>
    private const double UnsureS = 0.25;

    /// <summary>Loading rate is a slope over this long, s: long enough for 200 Hz, short enough for an impact (house rule).</summary>
    private const double RateOverS = 0.01;

    private const double RateWithinS = 0.25;

    /// <summary>A landing's impact and the load that follows have come within so long of touch-down, s (house rule).</summary>
    private const double PeaksWithinS = 0.3;

    /// <summary>Adds the landing's measures; gives the sample at which the athlete was stable, or null.</summary>
    /// <param name="into">Receives the measures.</param>
    /// <param name="plate">The recording.</param>
    /// <param name="touchDown">Start of the landing.</param>
    /// <param name="end">End of it: the next movement, or where the athlete leaves the plate.</param>
    /// <param name="motion">Null without a weighing.</param>
    public static double? Measure(MeasureList into, Plate plate, Instant touchDown, int end, FittedMotion? motion)
    {
        int from = (int)Math.Ceiling(touchDown.Sample);
        end = Math.Min(end, plate.ForceN.Length);
        PushMeasures.PeakForce(into, plate, MeasureNames.PeakLandingForce, from, end);
        LoadingRate(into, plate, from, end);
        if (end == plate.ForceN.Length && plate.Seconds(touchDown.Sample, end) is < PeaksWithinS and var seconds)
        {
            into.Doubt(Cautions.LandingCutOff(seconds), MeasureNames.PeakLandingForce, MeasureNames.PeakLoadingRate);
        }

        if (motion is null)
        {
            return null;
        }

        // Standing ends where the last still stretch does; stepping off after it is no part of the landing.
        int standing = motion.LastStillBefore(end);
        if (standing <= from && LandedBeside.StandsWithN(plate, new Stretch(from, end), motion.WeightN) is { } partN)
        {
            into.Doubt(
                Cautions.LandedBeside(partN, motion.WeightN),
                MeasureNames.FlightTime,
                MeasureNames.JumpHeightFlightTime,
                MeasureNames.PeakLandingForce,
                MeasureNames.PeakLoadingRate
            );
            return null;
        }

        Absorbed(into, plate, touchDown, end, motion);
        if (standing <= from)
        {
            return null;
        }

        double band = BandPart * motion.WeightN;
        int width = Width(plate, band);
        while (standing < end - width && Math.Abs(Mean(plate, standing, width) - motion.WeightN) <= band)
        {
            standing++;
        }

        // What the force may be off by near the band's edge decides which crossing is the last, and when.
        double noise = plate.Levels.NoiseN / Math.Sqrt((2 * width) + 1);
        double doubtN = PushMeasures.Quadrature(motion.WeightUncertaintyN, noise, motion.DisturbanceN / 2) + EdgeN;
        if (LastOutside(plate, motion.WeightN, band, width, standing, from) is not { } at)
        {
            return null;
        }

        if (plate.Seconds(at, standing - 1) < StandingS)
        {
            return null;
        }

        // Outside the wider band is outside the band, too, and that outside the narrower one.
        double wider = LastOutside(plate, motion.WeightN, band + doubtN, width, (int)at + 1, from) ?? from;
        double narrower = LastOutside(plate, motion.WeightN, band - doubtN, width, standing, from) ?? at;
        double u = Math.Max(Math.Abs(plate.Seconds(wider, at)), Math.Abs(plate.Seconds(at, narrower)));
        into.Add(
            MeasureNames.TimeToStabilisation,
            plate.Seconds(touchDown.Sample, at),
            Unit.Second,
            PushMeasures.Quadrature(u, touchDown.UncertaintyS, 0.3 / plate.RateHz),
            "last instant outside 5 % of weight"
        );
        if (u > UnsureS)
        {
            into.Doubt(Cautions.StabilisationUnsure, MeasureNames.TimeToStabilisation);
        }

        return at;
    }

    /// <summary>The landing down to its lowest point: what it takes from the body, and how the feet share it.</summary>
    private static void Absorbed(MeasureList into, Plate plate, Instant touchDown, int end, FittedMotion motion)
    {
        double v = motion.VelocityAt(touchDown.Sample);
        int offset = motion.Samples.From;
        int lowest = (int)Math.Ceiling(touchDown.Sample);
        int last = Math.Min(end, motion.Samples.To) - 1;
        while (lowest < last && motion.VelocityMS[lowest - offset] < 0)
        {
            lowest++;
        }

        if (v >= 0 || lowest >= last)
        {
            return;
        }

        double u = PushMeasures.TakeOffVelocityUncertainty(motion, touchDown);
        into.Add(
            MeasureNames.LandingNetImpulse,
            -motion.MassKg * v,
            Unit.NewtonSecond,
            PushMeasures.Quadrature(motion.MassKg * u, v * motion.WeightUncertaintyN * motion.MassKg / motion.WeightN),
            "touch-down to lowest point, momentum"
        );
        PushMeasures.AsymmetryOf(into, plate, MeasureNames.AsymmetryLandingImpulse, touchDown.Sample, lowest);
        Leading.Check(into, plate, touchDown, MeasureNames.AsymmetryLandingImpulse);
    }

    /// <summary>The last instant before a sample at which the force lies outside a band, between two samples; null where it never does.</summary>
    private static double? LastOutside(Plate plate, double weightN, double band, int width, int before, int from)
    {
        int last = before - 1;
        if (width == 0)
        {
            last = Samples.LastOff(plate.ForceN.Slice(from, before - from), weightN, band) + from;
        }

        while (last > from && Math.Abs(Mean(plate, last, width) - weightN) <= band)
        {
            last--;
        }

        if (last <= from || last + 1 >= plate.ForceN.Length)
        {
            return null;
        }

        double outside = Math.Abs(Mean(plate, last, width) - weightN) - band;
        double inside = band - Math.Abs(Mean(plate, last + 1, width) - weightN);
        return last + (outside + inside > 0 ? Math.Clamp(outside / (outside + inside), 0, 1) : 0.5);
    }

    /// <summary>Half the width of a running mean that keeps noise well inside the band, samples.</summary>
    private static int Width(Plate plate, double band)
    {
        double ratio = 5 * plate.Levels.NoiseN / band;
        int width = ratio <= 1 ? 0 : (int)Math.Ceiling(ratio * ratio / 2);
        return Math.Min(width, (int)(0.02 * plate.RateHz));
    }

    private static double Mean(Plate plate, int sample, int half)
    {
        int from = Math.Max(sample - half, 0);
        int to = Math.Min(sample + half + 1, plate.ForceN.Length);
        return ForceSums.Total(plate.ForceN.Slice(from, to - from)) / (to - from);
    }

    private static void LoadingRate(MeasureList into, Plate plate, int from, int end)
    {
        int over = Math.Max((int)Math.Round(RateOverS * plate.RateHz), 1);
        int until = Math.Min(from + (int)(RateWithinS * plate.RateHz), end) - over;
        double most = Samples.GreatestRise(plate.ForceN, Math.Max(from - 1, 0), until, over);

        double seconds = over / plate.RateHz;
        if (most > 0)
        {
            into.Add(
                MeasureNames.PeakLoadingRate,
                most / seconds,
                Unit.NewtonPerSecond,
                PushMeasures.Quadrature(2 * plate.Levels.NoiseN, 0.05 * most) / seconds,
                "steepest rise over 10 ms"
            );
        }
    }
}
