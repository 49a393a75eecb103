namespace Jumpwright.Athletes.Growth;

/// <summary>
/// Years from peak height velocity, negative before it. A prompt for care, never a gate: the error (95 % about ± 1.2 years) is
/// wider than the band "around the spurt" itself, and the formulas pull early and late maturers towards the mean.
/// Ages in years, lengths in centimetres, mass in kilograms.
/// </summary>
public static class MaturityOffset
{
    /// <summary>Standard error of the estimate in boys, years (Mirwald et al. 2002, seen at second hand).</summary>
    public const double MirwaldBoysStandardErrorY = 0.59;

    /// <summary>Standard error of the estimate in girls, years (Mirwald et al. 2002, seen at second hand).</summary>
    public const double MirwaldGirlsStandardErrorY = 0.57;

    /// <summary>
    /// Boys, Mirwald et al. 2002, Med Sci Sports Exerc 34:689–694. The last term takes mass over stature in per cent: without
    /// the factor 100, which some pages lose, the result moves by more than half a year.
    /// </summary>
    public static double MirwaldBoysY(double ageY, double statureCm, double sittingHeightCm, double massKg)
    {
        double legCm = statureCm - sittingHeightCm;
        return -9.236
            + (0.0002708 * legCm * sittingHeightCm)
            - (0.001663 * ageY * legCm)
            + (0.007216 * ageY * sittingHeightCm)
            + (0.02292 * MassOverStaturePct(massKg, statureCm));
    }

    /// <summary>Girls, Mirwald et al. 2002; the same trap as in <see cref="MirwaldBoysY"/>, here worth two years.</summary>
    public static double MirwaldGirlsY(double ageY, double statureCm, double sittingHeightCm, double massKg)
    {
        double legCm = statureCm - sittingHeightCm;
        return -9.376
            + (0.0001882 * legCm * sittingHeightCm)
            + (0.0022 * ageY * legCm)
            + (0.005841 * ageY * sittingHeightCm)
            - (0.002658 * ageY * massKg)
            + (0.07693 * MassOverStaturePct(massKg, statureCm));
    }

    /// <summary>Boys from sitting height, Moore et al. 2015, Med Sci Sports Exerc 47:1755–1764 (constants from memory).</summary>
    public static double MooreBoysSittingY(double ageY, double sittingHeightCm) =>
        -8.128741 + (0.0070346 * ageY * sittingHeightCm);

    /// <summary>Boys from stature, Moore et al. 2015.</summary>
    public static double MooreBoysStatureY(double ageY, double statureCm) => -7.999994 + (0.0036124 * ageY * statureCm);

    /// <summary>Girls from stature, Moore et al. 2015 (constants from memory).</summary>
    public static double MooreGirlsY(double ageY, double statureCm) => -7.709133 + (0.0042232 * ageY * statureCm);

    private static double MassOverStaturePct(double massKg, double statureCm) => 100 * massKg / statureCm;
}
