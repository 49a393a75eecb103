using MathNet.Numerics.Statistics;

namespace Jumpwright.Statistics;

/// <summary>
/// Noise of a test from two trials of the same people. Source: Hopkins 2000, Sports Med 30:1–15 (definitions).
/// </summary>
public static class Reliability
{
    /// <summary>Typical error, in the unit of the trials: SD of the differences over √2.</summary>
    public static double TypicalError(ReadOnlySpan<double> first, ReadOnlySpan<double> second) =>
        Differences(first, second).StandardDeviation() / Math.Sqrt(2);

    /// <summary>Typical error in % of the grand mean.</summary>
    public static double CoefficientOfVariationPct(ReadOnlySpan<double> first, ReadOnlySpan<double> second) =>
        100 * TypicalError(first, second) / ((first.ToArray().Mean() + second.ToArray().Mean()) / 2);

    /// <summary>
    /// Typical error in % by the logarithm of the trials, for errors that grow with the value:
    /// 100 · (exp(SD of the differences of ln / √2) − 1). All values must be above 0.
    /// </summary>
    public static double LogCoefficientOfVariationPct(ReadOnlySpan<double> first, ReadOnlySpan<double> second) =>
        100 * (Math.Exp(TypicalError(Logarithms(first), Logarithms(second))) - 1);

    /// <summary>Limits of agreement: mean difference (second less first) ± 1.96 SD of the differences.</summary>
    public static (double Lower, double Upper) LimitsOfAgreement(
        ReadOnlySpan<double> first,
        ReadOnlySpan<double> second
    )
    {
        double[] differences = Differences(first, second);
        double mean = differences.Mean();
        double half = 1.96 * differences.StandardDeviation();
        return (mean - half, mean + half);
    }

    /// <summary>Standard error of measurement from a between-athlete SD and an intraclass correlation: SD·√(1 − ICC).</summary>
    public static double StandardErrorOfMeasurement(double standardDeviation, double intraclassCorrelation) =>
        standardDeviation * Math.Sqrt(1 - intraclassCorrelation);

    /// <summary>
    /// Minimal detectable change z·√2·SEM. Papers differ in z (1.64 or 1.645 for 90 %, 1.96 for 95 %; Reid et al. 2007
    /// used 1.64), so the caller names it.
    /// </summary>
    public static double MinimalDetectableChange(double standardError, double z) => z * Math.Sqrt(2) * standardError;

    private static double[] Logarithms(ReadOnlySpan<double> values)
    {
        double[] logarithms = new double[values.Length];
        for (int i = 0; i < logarithms.Length; i++)
        {
            logarithms[i] =
                values[i] > 0
                    ? Math.Log(values[i])
                    : throw new ArgumentException($"Value {i + 1} is not above 0.", nameof(values));
        }

        return logarithms;
    }

    private static double[] Differences(ReadOnlySpan<double> first, ReadOnlySpan<double> second)
    {
        if (first.Length != second.Length || first.Length < 2)
        {
            throw new ArgumentException(
                "Two trials of the same people, at least two of them, are needed.",
                nameof(second)
            );
        }

        double[] differences = new double[first.Length];
        for (int i = 0; i < differences.Length; i++)
        {
            differences[i] = second[i] - first[i];
        }

        return differences;
    }
}
