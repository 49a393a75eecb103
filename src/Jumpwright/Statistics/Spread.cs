using MathNet.Numerics.Statistics;

namespace Jumpwright.Statistics;

/// <summary>How far the trials of one athlete, or the athletes of a squad, lie apart. The SD is the sample's (n − 1).</summary>
public static class Spread
{
    /// <summary>Sample SD, in the unit of the values.</summary>
    public static double StandardDeviation(ReadOnlySpan<double> values) => AtLeastTwo(values).StandardDeviation();

    /// <summary>100 · SD / mean, %.</summary>
    public static double CoefficientOfVariationPct(ReadOnlySpan<double> values) =>
        100 * StandardDeviation(values) / values.ToArray().Mean();

    /// <summary>
    /// Smallest worthwhile change: 0.2 of the SD between athletes, in their unit. A convention that moves with the squad
    /// (Hopkins), not a property of the athlete.
    /// </summary>
    public static double SmallestWorthwhileChange(ReadOnlySpan<double> athletes) => 0.2 * StandardDeviation(athletes);

    private static double[] AtLeastTwo(ReadOnlySpan<double> values) =>
        values.Length >= 2
            ? values.ToArray()
            : throw new ArgumentException("At least two values are needed.", nameof(values));
}
