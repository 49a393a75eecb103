namespace Jumpwright.Quantities;

/// <summary>
/// Inches and pounds, both exact by definition (international yard and pound agreement of 1959; NIST SP 811, appendix B).
/// </summary>
public static class Customary
{
    /// <summary>Metres in an inch.</summary>
    public const double MetresPerInch = 0.0254;

    /// <summary>Kilograms in an avoirdupois pound.</summary>
    public const double KilogramsPerPound = 0.45359237;

    public static double InchesOf(double metres) => metres / MetresPerInch;

    public static double MetresOf(double inches) => inches * MetresPerInch;

    public static double PoundsOf(double kilograms) => kilograms / KilogramsPerPound;

    public static double KilogramsOf(double pounds) => pounds * KilogramsPerPound;

    /// <summary>
    /// A length as it is written in inches, the same on a card to set it up, in a sentence and in a table, so that one box has one height: to
    /// the tenth, and never more than it is, because it may be what somebody steps off. What is under 5 cm is no height but a doubt or a
    /// difference, which may not shrink: the nearest tenth.
    /// </summary>
    /// <param name="metres">m</param>
    /// <returns>in</returns>
    public static double InchesToWrite(double metres) =>
        Math.Abs(metres) < 0.05 ? Math.Round(InchesOf(metres), 1) : Down(10 * InchesOf(metres)) / 10;

    /// <summary>A load to take: whole pounds, and never more than was planned.</summary>
    /// <param name="kilograms">Planned load, kg.</param>
    /// <returns>lb</returns>
    public static double LoadToTakeLb(double kilograms) => Down(PoundsOf(kilograms));

    /// <summary>Rounds down; what lies below a whole number by no more than arithmetic's own error counts as that number.</summary>
    private static double Down(double value)
    {
        double nearest = Math.Round(value);
        return Math.Abs(value - nearest) <= 1e-9 * Math.Max(1, Math.Abs(value)) ? nearest : Math.Floor(value);
    }
}
