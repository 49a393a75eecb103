using Jumpwright.Quantities;
using MathNet.Numerics.LinearAlgebra;

namespace Jumpwright.Statistics;

/// <summary>
/// Variance components from tables with gaps: y = fixed part + athlete + residual, by restricted maximum likelihood, the ratio of
/// the two variances searched in one dimension (Laird and Ware 1982, Biometrics 38:963–974, from memory).
/// </summary>
/// <param name="Coefficients">Fixed effects in the order of the columns.</param>
/// <param name="StandardErrors">Theirs.</param>
/// <param name="BetweenSd">SD between athletes.</param>
/// <param name="WithinSd">SD within an athlete.</param>
/// <param name="Criterion">−2 log restricted likelihood at the optimum.</param>
public sealed record RandomIntercept(
    double[] Coefficients,
    double[] StandardErrors,
    double BetweenSd,
    double WithinSd,
    double Criterion
)
{
    /// <summary>Variance between over all variance: the correlation of two trials of one athlete.</summary>
    public double IntraclassCorrelation => BetweenSd * BetweenSd / ((BetweenSd * BetweenSd) + (WithinSd * WithinSd));

    /// <summary>Fits; refused with fewer than two athletes, or nobody measured twice.</summary>
    /// <param name="values">One value a row.</param>
    /// <param name="athletes">Whose it is.</param>
    /// <param name="columns">Fixed part besides the intercept, a column each; may be empty.</param>
    public static Outcome<RandomIntercept> Fit(
        IReadOnlyList<double> values,
        IReadOnlyList<string> athletes,
        params IReadOnlyList<double>[] columns
    )
    {
        int n = values.Count;
        int p = columns.Length + 1;
        int[][] groups =
        [
            .. Enumerable.Range(0, n).GroupBy(i => athletes[i], StringComparer.Ordinal).Select(g => g.ToArray()),
        ];
        if (groups.Length < 2 || groups.All(g => g.Length < 2) || n <= p + 1)
        {
            return new Refusal(
                $"{groups.Length} athletes with {n} values: at least two athletes, and one of them measured twice, are needed."
            );
        }

        double X(int row, int column) => column == 0 ? 1 : columns[column - 1][row];

        (double Criterion, Vector<double> Beta, Matrix<double> Information, double Variance) At(double ratio)
        {
            Matrix<double> xx = Matrix<double>.Build.Dense(p, p);
            Vector<double> xy = Vector<double>.Build.Dense(p);
            double yy = 0;
            double logs = 0;
            foreach (int[] group in groups)
            {
                double shrink = ratio / (1 + (group.Length * ratio));
                logs += Math.Log(1 + (group.Length * ratio));
                double sy = group.Sum(i => values[i]);
                yy += group.Sum(i => values[i] * values[i]) - (shrink * sy * sy);
                for (int a = 0; a < p; a++)
                {
                    double sa = group.Sum(i => X(i, a));
                    xy[a] += group.Sum(i => X(i, a) * values[i]) - (shrink * sa * sy);
                    for (int b = 0; b < p; b++)
                    {
                        xx[a, b] += group.Sum(i => X(i, a) * X(i, b)) - (shrink * sa * group.Sum(i => X(i, b)));
                    }
                }
            }

            Vector<double> beta = xx.Solve(xy);
            double variance = Math.Max((yy - (beta * xy)) / (n - p), 1e-300);
            double criterion = ((n - p) * (Math.Log(2 * Math.PI * variance) + 1)) + logs + Math.Log(xx.Determinant());
            return (criterion, beta, xx, variance);
        }

        double golden = (Math.Sqrt(5) - 1) / 2;
        double low = -18;
        double high = 12;
        while (high - low > 1e-9)
        {
            double a = high - (golden * (high - low));
            double b = low + (golden * (high - low));
            (low, high) = At(Math.Exp(a)).Criterion < At(Math.Exp(b)).Criterion ? (low, b) : (a, high);
        }

        double ratioAt = Math.Exp((low + high) / 2);
        var best = At(ratioAt);
        Matrix<double> covariance = best.Information.Inverse() * best.Variance;
        return new RandomIntercept(
            [.. best.Beta],
            [.. Enumerable.Range(0, p).Select(i => Math.Sqrt(covariance[i, i]))],
            Math.Sqrt(ratioAt * best.Variance),
            Math.Sqrt(best.Variance),
            best.Criterion
        );
    }
}
