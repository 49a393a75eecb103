using MathNet.Numerics.Distributions;
using MathNet.Numerics.LinearAlgebra;

namespace Jumpwright.Statistics;

/// <summary>
/// Cumulative sums of standard normal scores, one upward and one downward: S = max(0, S + z − k); an alarm when either passes h,
/// after which both start again. Page 1954, Biometrika 41:100–115; mean run between false alarms by a Markov chain (Brook and
/// Evans 1972, Biometrika 59:539–549); both from memory.
/// </summary>
/// <param name="Allowance">k, in SD: half of the shift that is to be noticed soonest.</param>
/// <param name="Threshold">h, in SD.</param>
public sealed record ControlChart(double Allowance, double Threshold)
{
    private const int Cells = 60;

    /// <summary>However few series are watched, an alarm is never cheaper than one false in so many sessions of a series.</summary>
    public const double MostPerSession = 0.02;

    /// <summary>k that this house uses: tuned to a shift of one session's SD.</summary>
    public const double UsualAllowance = 0.5;

    /// <summary>Mean number of sessions from a fresh start to a false alarm on one side.</summary>
    public double RunLengthOneSided()
    {
        Vector<double> ones = Vector<double>.Build.Dense(Cells, 1);
        return (Matrix<double>.Build.DenseIdentity(Cells) - Stay()).Solve(ones)[0];
    }

    /// <summary>Both sides watched: the rates add up.</summary>
    public double RunLength() => RunLengthOneSided() / 2;

    /// <summary>
    /// False alarms a session, both sides together, counted from a fresh start over so many sessions; after each alarm the sums
    /// start again. Below 1 / <see cref="RunLength"/>, because sums need some sessions to grow.
    /// </summary>
    public double RateOver(int sessions)
    {
        Matrix<double> stay = Stay();
        Vector<double> at = Vector<double>.Build.Dense(Cells);
        at[0] = 1;
        double alarms = 0;
        for (int i = 0; i < sessions; i++)
        {
            at = stay.LeftMultiply(at);
            double alarm = Math.Max(0, 1 - at.Sum());
            alarms += alarm;

            // The other side starts this one again as often as it alarms itself.
            at *= 1 - alarm;
            at[0] += 1 - at.Sum();
        }

        return 2 * alarms / sessions;
    }

    /// <summary>
    /// The chart whose false alarms come at that rate: so many a week over a number of series that are each tested so often,
    /// counted over a season.
    /// </summary>
    /// <param name="alarmsPerWeek">Wished false alarms a week, over all series.</param>
    /// <param name="sessionsPerWeek">Sessions a week, summed over all series.</param>
    /// <param name="season">Sessions of a season.</param>
    public static ControlChart For(double alarmsPerWeek, double sessionsPerWeek, int season = 40)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(alarmsPerWeek);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(sessionsPerWeek);
        double wished = Math.Min(alarmsPerWeek / sessionsPerWeek, MostPerSession);
        double low = 0.05;
        double high = 12;
        for (int i = 0; i < 40; i++)
        {
            double middle = (low + high) / 2;
            (low, high) =
                new ControlChart(UsualAllowance, middle).RateOver(season) > wished ? (middle, high) : (low, middle);
        }

        return new ControlChart(UsualAllowance, (low + high) / 2);
    }

    /// <summary>
    /// How widely the surprises of a squad really spread: 1.4826 times the median of their size, which real changes of a few hardly
    /// move, pulled to 1 while they are few. Scores are divided by it before they are summed.
    /// </summary>
    public static double SpreadOf(IEnumerable<double> scores)
    {
        const double pull = 60;
        double[] sizes = [.. scores.Select(Math.Abs).Order()];
        if (sizes.Length == 0)
        {
            return 1;
        }

        double median = (sizes[(sizes.Length - 1) / 2] + sizes[sizes.Length / 2]) / 2;
        return ((1.4826 * median * sizes.Length) + pull) / (sizes.Length + pull);
    }

    /// <summary>The alarms over a row of scores: index and direction (+1 risen, −1 fallen).</summary>
    public IEnumerable<(int Index, int Direction)> Alarms(IReadOnlyList<double> scores)
    {
        double up = 0;
        double down = 0;
        for (int i = 0; i < scores.Count; i++)
        {
            up = Math.Max(0, up + scores[i] - Allowance);
            down = Math.Max(0, down - scores[i] - Allowance);
            if (up > Threshold || down > Threshold)
            {
                yield return (i, up > Threshold ? 1 : -1);
                (up, down) = (0, 0);
            }
        }
    }

    private Matrix<double> Stay()
    {
        double width = 2 * Threshold / ((2 * Cells) - 1);
        return Matrix<double>.Build.Dense(
            Cells,
            Cells,
            (from, to) =>
            {
                double next = (to * width) - (from * width) + Allowance;
                return to == 0
                    ? Normal.CDF(0, 1, next + (width / 2))
                    : Normal.CDF(0, 1, next + (width / 2)) - Normal.CDF(0, 1, next - (width / 2));
            }
        );
    }
}
