using Jumpwright.Quantities;

namespace Jumpwright.Mechanics;

/// <summary>
/// Stiffness from contact and flight time alone, after the half-sine model. Disputed for contacts above 0.25 s and for curves
/// with two peaks, which a half-sine does not fit.
/// </summary>
public static class Stiffness
{
    private const double G = Gravity.MetresPerSecondSquared;

    /// <summary>
    /// Vertical stiffness in hopping, N/m (Dalleau et al. 2004, Int J Sports Med 25:170–176; equation from memory).
    /// </summary>
    /// <param name="massKg">Mass, kg.</param>
    /// <param name="contactS">Contact time, s.</param>
    /// <param name="flightS">Flight time, s.</param>
    /// <returns>Not finite and positive where the model does not fit: contact too long for the flight.</returns>
    public static double HoppingNM(double massKg, double contactS, double flightS)
    {
        double cycle = flightS + contactS;
        return massKg * Math.PI * cycle / (contactS * contactS * ((cycle / Math.PI) - (contactS / 4)));
    }

    /// <summary>
    /// Greatest force of the sine-wave model, N (Morin et al. 2005, J Appl Biomech 21:167–180; equations from memory).
    /// </summary>
    public static double SineForceN(double massKg, double contactS, double flightS) =>
        massKg * G * (Math.PI / 2) * ((flightS / contactS) + 1);

    /// <summary>Fall of the centre of mass during contact in the same model, m.</summary>
    public static double SineFallM(double massKg, double contactS, double flightS) =>
        (SineForceN(massKg, contactS, flightS) * contactS * contactS / (massKg * Math.PI * Math.PI))
        - (G * contactS * contactS / 8);

    /// <summary>Vertical stiffness in running, N/m, same model.</summary>
    public static double RunningVerticalNM(double massKg, double contactS, double flightS) =>
        SineForceN(massKg, contactS, flightS) / SineFallM(massKg, contactS, flightS);

    /// <summary>Leg stiffness in running, N/m, same model.</summary>
    /// <param name="massKg">Mass, kg.</param>
    /// <param name="legLengthM">Leg length, m; about 0.53 of stature.</param>
    /// <param name="speedMS">Running speed, m/s.</param>
    /// <param name="contactS">Contact time, s.</param>
    /// <param name="flightS">Flight time, s.</param>
    public static double RunningLegNM(double massKg, double legLengthM, double speedMS, double contactS, double flightS)
    {
        double half = speedMS * contactS / 2;
        double shortening =
            legLengthM - Math.Sqrt((legLengthM * legLengthM) - (half * half)) + SineFallM(massKg, contactS, flightS);
        return SineForceN(massKg, contactS, flightS) / shortening;
    }

    /// <summary>
    /// Half-period form, N/m: m (π / t)², with the <i>effective</i> contact (force above weight), not the whole one
    /// (J Exp Biol 208:2333, figure 5; McMahon and Cheng 1990, J Biomech 23 suppl 1:65–78, from memory).
    /// </summary>
    public static double HalfPeriodNM(double massKg, double effectiveContactS) =>
        massKg * (Math.PI / effectiveContactS) * (Math.PI / effectiveContactS);
}
