using Jumpwright.Quantities;

namespace Jumpwright.Trials;

/// <summary>
/// Do impulse and flight time tell one story? In flight the centre of mass rises and falls freely, so the two give how much
/// lower it is at touch-down than at take-off. A few centimetres lower is a bent landing (Yamashita et al. 2020,
/// doi:10.3390/app10030776: 0.053 m); higher is impossible on a level plate.
/// </summary>
internal static class Agreement
{
    private const double G = Gravity.MetresPerSecondSquared;
    private const double WorthSayingM = 0.02;
    private const double MostLowerM = 0.25;

    /// <summary>Lower than this, the landing was another than the jump's: legs drawn in, or a foot beside the plate, m (house rule).</summary>
    private const double NoJumpsM = 0.15;

    /// <summary>Small jumps may leave with bent and land with straighter legs, m.</summary>
    private const double MostHigherM = 0.025;

    public static void Check(MeasureList into, Plate plate, FittedMotion motion, Instant takeOff, Instant touchDown)
    {
        double t = plate.Seconds(takeOff.Sample, touchDown.Sample);
        double v = motion.VelocityAt(takeOff.Sample);
        double lower = (G * t * t / 2) - (v * t);
        double uv = PushMeasures.TakeOffVelocityUncertainty(motion, takeOff);
        double u = t * PushMeasures.Quadrature(uv, G / 2 * takeOff.UncertaintyS, G / 2 * touchDown.UncertaintyS);
        if (lower < -MostHigherM - (3 * u) || lower > MostLowerM)
        {
            string sentence = lower < 0 ? Cautions.LandedHigher(-lower) : Lower(into, lower);
            // Either the edges are wrong or the weight is, and nobody can say which.
            into.Doubt(sentence, [.. UnlikeStands.MadeOfWeight, MeasureNames.JumpHeightFlightTime]);
        }
        else if (lower > NoJumpsM + (2 * u))
        {
            into.Doubt(Lower(into, lower), MeasureNames.JumpHeightFlightTime, MeasureNames.FlightTime);
        }
        else if (lower > WorthSayingM + (2 * u))
        {
            into.Warn(Lower(into, lower));
        }
    }

    /// <summary>Nobody is told to believe what is named doubtful.</summary>
    private static string Lower(MeasureList of, double metres) =>
        of.IsDoubtful(MeasureNames.JumpHeight) ? Cautions.LandedLowerOrNot(metres) : Cautions.LandedLower(metres);
}
