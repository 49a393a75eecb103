namespace Jumpwright.Mechanics;

/// <summary>
/// Left against right. Formulas differ by what stands below the line (Bishop et al. 2018, doi:10.1519/SSC.0000000000000371;
/// from memory), so each is named; the contract's is over the sum.
/// </summary>
public static class Asymmetry
{
    /// <summary>(L − R) / (L + R) · 100, %; positive = left larger.</summary>
    public static double OverSumPct(double left, double right) => 100 * (left - right) / (left + right);
}
