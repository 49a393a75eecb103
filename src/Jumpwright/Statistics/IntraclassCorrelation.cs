namespace Jumpwright.Statistics;

/// <summary>
/// The six forms of the intraclass correlation, from one table of athletes × trials. Source: Shrout &amp; Fleiss 1979 (forms
/// from memory). The form must be named wherever one is shown: (1, ·) one-way, (2, ·) trials are a random sample, so a shift
/// from trial to trial counts against the test, (3, ·) the trials are fixed, so it does not; (·, 1) for a single trial, (·, k)
/// for the mean of the k trials.
/// </summary>
/// <param name="Athletes">Number of athletes n.</param>
/// <param name="Trials">Number of trials k.</param>
/// <param name="BetweenAthletes">Mean square of rows.</param>
/// <param name="BetweenTrials">Mean square of columns.</param>
/// <param name="Residual">Mean square of the residual.</param>
/// <param name="WithinAthletes">Mean square within rows.</param>
public sealed record IntraclassCorrelation(
    int Athletes,
    int Trials,
    double BetweenAthletes,
    double BetweenTrials,
    double Residual,
    double WithinAthletes
)
{
    /// <summary>ICC(1,1).</summary>
    public double OneWaySingle =>
        (BetweenAthletes - WithinAthletes) / (BetweenAthletes + ((Trials - 1) * WithinAthletes));

    /// <summary>ICC(1,k).</summary>
    public double OneWayMean => (BetweenAthletes - WithinAthletes) / BetweenAthletes;

    /// <summary>ICC(2,1).</summary>
    public double RandomSingle =>
        (BetweenAthletes - Residual)
        / (BetweenAthletes + ((Trials - 1) * Residual) + (Trials * (BetweenTrials - Residual) / Athletes));

    /// <summary>ICC(2,k).</summary>
    public double RandomMean =>
        (BetweenAthletes - Residual) / (BetweenAthletes + ((BetweenTrials - Residual) / Athletes));

    /// <summary>ICC(3,1).</summary>
    public double FixedSingle => (BetweenAthletes - Residual) / (BetweenAthletes + ((Trials - 1) * Residual));

    /// <summary>ICC(3,k).</summary>
    public double FixedMean => (BetweenAthletes - Residual) / BetweenAthletes;

    /// <summary>The mean squares of a complete table.</summary>
    /// <param name="table">Row: athlete; column: trial. At least two of each, all finite, no gaps.</param>
    /// <exception cref="ArgumentException">The table is too small or holds a value that is not finite.</exception>
    public static IntraclassCorrelation Of(double[,] table)
    {
        ArgumentNullException.ThrowIfNull(table);
        int n = table.GetLength(0);
        int k = table.GetLength(1);
        if (n < 2 || k < 2)
        {
            throw new ArgumentException("At least two athletes with two trials each are needed.", nameof(table));
        }

        double[] rows = new double[n];
        double[] columns = new double[k];
        for (int i = 0; i < n; i++)
        {
            for (int j = 0; j < k; j++)
            {
                if (!double.IsFinite(table[i, j]))
                {
                    throw new ArgumentException($"Athlete {i + 1}, trial {j + 1} has no value.", nameof(table));
                }

                rows[i] += table[i, j] / k;
                columns[j] += table[i, j] / n;
            }
        }

        double grand = rows.Average();
        double between = rows.Sum(r => Square(r - grand)) * k;
        double trials = columns.Sum(c => Square(c - grand)) * n;
        double within = 0;
        double residual = 0;
        for (int i = 0; i < n; i++)
        {
            for (int j = 0; j < k; j++)
            {
                within += Square(table[i, j] - rows[i]);
                residual += Square(table[i, j] - rows[i] - columns[j] + grand);
            }
        }

        return new(n, k, between / (n - 1), trials / (k - 1), residual / ((n - 1) * (k - 1)), within / (n * (k - 1)));
    }

    private static double Square(double x) => x * x;
}
