namespace Jumpwright.Mechanics;

/// <summary>
/// Power from jump height, W: regressions on one population each. They disagree by hundreds of watts and their bias changes
/// sign with the population (Duncan et al. 2008, doi:10.1519/jsc.0b013e31816a6337: all too low in junior basketball; Canavan
/// and Vescovi 2004: Sayers too high in women), so a value carries its author's name and never stands on another's trend.
/// Heights and statures in cm, mass in kg, as the papers write them.
/// </summary>
public static class PowerRegressions
{
    /// <summary>Peak power, squat-jump form (Sayers 1999, Med Sci Sports Exerc 31:572–577; read on a secondary page).</summary>
    public static double SayersSquatJumpW(double heightCm, double massKg) => (60.7 * heightCm) + (45.3 * massKg) - 2055;

    /// <summary>Peak power, countermovement form (Sayers 1999, as above; equation from memory).</summary>
    public static double SayersCountermovementW(double heightCm, double massKg) =>
        (51.9 * heightCm) + (48.9 * massKg) - 2007;

    /// <summary>
    /// Peak power (Harman 1991). Disputed sign: many pages print + 1822; only minus fits the published sample means.
    /// </summary>
    public static double HarmanPeakW(double heightCm, double massKg) => (61.9 * heightCm) + (36.0 * massKg) - 1822;

    /// <summary>Mean power (Harman 1991; read on a secondary page).</summary>
    public static double HarmanMeanW(double heightCm, double massKg) => (21.2 * heightCm) + (23.0 * massKg) - 1393;

    /// <summary>
    /// Peak power (Johnson and Bahamonde 1996; equation from memory). A copied variant with age and + 1308 is garbled.
    /// </summary>
    public static double JohnsonBahamondePeakW(double heightCm, double massKg, double statureCm) =>
        (78.6 * heightCm) + (60.3 * massKg) - (15.3 * statureCm) - 1308;

    /// <summary>Mean power (Johnson and Bahamonde 1996; equation from memory).</summary>
    public static double JohnsonBahamondeMeanW(double heightCm, double massKg, double statureCm) =>
        (43.8 * heightCm) + (32.7 * massKg) - (16.8 * statureCm) + 431;

    /// <summary>
    /// Peak power, 20 women (Canavan and Vescovi 2004, Med Sci Sports Exerc 36:1589–1593; R² 0.92, standard error 120.8 W).
    /// </summary>
    public static double CanavanVescoviW(double heightCm, double massKg) =>
        (65.1 * heightCm) + (25.8 * massKg) - 1413.1;

    /// <summary>
    /// Peak power, 415 males of 12 to 24 years (Amonette 2012, J Strength Cond Res 26:1749–1755; standard error 250.7 W).
    /// </summary>
    public static double AmonetteW(double heightCm, double massKg) => (63.6 * heightCm) + (42.7 * massKg) - 1846.5;

    /// <summary>
    /// <i>Mean</i> power of the fall, not of the jump (Lewis formula in Fox and Mathews 1974): √4.9 · m · √h · 9.81. Often
    /// mistaken for peak power.
    /// </summary>
    public static double LewisMeanW(double heightCm, double massKg) =>
        Math.Sqrt(4.9) * massKg * Math.Sqrt(heightCm / 100) * 9.81;
}
