namespace Jumpwright.Statistics;

/// <summary>
/// Left against right. Nine formulas are in use and give different numbers for the same jump (Bishop et al. 2016,
/// doi:10.1519/SSC.0000000000000264; 2018, doi:10.1519/SSC.0000000000000371), so each has its own name here.
/// </summary>
public static class Symmetry
{
    /// <summary>Limb symmetry index of distances, heights or torques: 100 · involved / uninvolved, %.</summary>
    public static double LimbSymmetryIndexPct(double involved, double uninvolved) => 100 * involved / uninvolved;

    /// <summary>Limb symmetry index of a timed test, where less is better: 100 · uninvolved / involved, %.</summary>
    public static double LimbSymmetryIndexTimedPct(double involvedS, double uninvolvedS) =>
        100 * uninvolvedS / involvedS;

    /// <summary>100 · (L − R) / larger, %; positive = left larger. For tests of one leg at a time.</summary>
    public static double OverLargerPct(double left, double right) => 100 * (left - right) / Math.Max(left, right);

    /// <summary>100 · (L − R) / smaller, %; positive = left larger.</summary>
    public static double OverSmallerPct(double left, double right) => 100 * (left - right) / Math.Min(left, right);

    /// <summary>100 · (L − R) / mean, %; positive = left larger.</summary>
    public static double OverMeanPct(double left, double right) => 200 * (left - right) / (left + right);

    /// <summary>100 · (L − R) / (L + R), %; positive = left larger. For both legs in one jump.</summary>
    public static double OverSumPct(double left, double right) => 100 * (left - right) / (left + right);

    /// <summary>Symmetry angle: 100 · (45° − atan(R / L)) / 90°, %; positive = left larger.</summary>
    public static double SymmetryAnglePct(double left, double right) =>
        100 * ((Math.PI / 4) - Math.Atan2(right, left)) / (Math.PI / 2);

    /// <summary>Standard uncertainty of 100 · smaller / larger, %, from those of the two (independent, first order).</summary>
    public static double RatioStandardUncertaintyPct(
        double smaller,
        double smallerUncertainty,
        double larger,
        double largerUncertainty
    ) =>
        100
        * Math.Abs(smaller / larger)
        * Math.Sqrt(Math.Pow(smallerUncertainty / smaller, 2) + Math.Pow(largerUncertainty / larger, 2));
}
