using System.Collections.Immutable;
using MathNet.Numerics.Distributions;

namespace Jumpwright.Statistics;

/// <summary>
/// What is believed of an athlete's level before their own sessions are seen, all in % of the level: weights on a grid of how fast
/// a level walks and how much a day differs from the next. It starts from published values and house rules and is learned from the
/// squad's own series.
/// </summary>
public sealed record LevelPrior
{
    private LevelPrior(double trialPct, double trialDegreesOfFreedom, ImmutableArray<double> weights)
    {
        TrialPct = trialPct;
        TrialDegreesOfFreedom = trialDegreesOfFreedom;
        Weights = weights;
    }

    /// <summary>SD by which a level may walk in a week, %.</summary>
    public static ImmutableArray<double> WeekPct { get; } = [0, 0.15, 0.3, 0.5, 0.8, 1.2, 1.8, 2.8];

    /// <summary>SD from day to day beyond the trials, %.</summary>
    public static ImmutableArray<double> DayPct { get; } = [0.5, 1, 1.5, 2, 2.7, 3.6, 5, 7];

    /// <summary>Trial-to-trial SD inside a session, to start from.</summary>
    public double TrialPct { get; init; }

    /// <summary>How many degrees of freedom it counts for.</summary>
    public double TrialDegreesOfFreedom { get; init; }

    /// <summary>Weight of each pair, walk by walk; sums to 1.</summary>
    public ImmutableArray<double> Weights { get; init; }

    /// <summary>Lognormal in both directions; a level that does not walk at all has a fifth of the weight.</summary>
    public static LevelPrior Of(
        double trialPct,
        double trialDegreesOfFreedom,
        double dayPctMedian,
        double dayLogSd,
        double weekPctMedian,
        double weekLogSd
    )
    {
        double[] week = Cells(WeekPct.AsSpan()[1..], weekPctMedian, weekLogSd);
        double[] day = Cells(DayPct.AsSpan(), dayPctMedian, dayLogSd);
        const double still = 0.2;
        return new LevelPrior(
            trialPct,
            trialDegreesOfFreedom,
            [.. day.Select(d => still * d), .. week.SelectMany(w => day.Select(d => (1 - still) * w * d))]
        );
    }

    /// <summary>
    /// The squad's own prior: the weights that its series share, by expectation and maximisation, with the start counting for so
    /// many series (empirical Bayes).
    /// </summary>
    /// <param name="series">Each series' sessions; one measure, device and method.</param>
    /// <param name="startCountsFor">How many series the start counts for.</param>
    public LevelPrior LearnedFrom(IReadOnlyList<SessionMean[]> series, double startCountsFor = 10)
    {
        double[][] likelihoods = [.. series.Where(s => s.Length >= 4).Select(s => LevelBelief.LikelihoodsOf(s, this))];
        if (likelihoods.Length == 0)
        {
            return this;
        }

        double[] weights = [.. Weights];
        for (int turn = 0; turn < 60; turn++)
        {
            double[] counts = [.. Weights.Select(w => startCountsFor * w)];
            foreach (double[] likelihood in likelihoods)
            {
                double sum = 0;
                for (int i = 0; i < weights.Length; i++)
                {
                    sum += weights[i] * likelihood[i];
                }

                for (int i = 0; i < weights.Length; i++)
                {
                    counts[i] += weights[i] * likelihood[i] / sum;
                }
            }

            double all = startCountsFor + likelihoods.Length;
            for (int i = 0; i < weights.Length; i++)
            {
                weights[i] = counts[i] / all;
            }
        }

        return this with
        {
            Weights = [.. weights],
        };
    }

    /// <summary>The same, for a level that walks no faster than that place of <see cref="WeekPct"/>.</summary>
    public LevelPrior WalkingNoFasterThan(double weekPct)
    {
        int days = DayPct.Length;
        double kept = Enumerable.Range(0, Weights.Length).Where(i => WeekPct[i / days] <= weekPct).Sum(i => Weights[i]);
        return this with { Weights = [.. Weights.Select((w, i) => WeekPct[i / days] <= weekPct ? w / kept : 0)] };
    }

    private static double[] Cells(ReadOnlySpan<double> places, double median, double logSd)
    {
        var weights = new double[places.Length];
        double sum = 0;
        for (int i = 0; i < places.Length; i++)
        {
            // Each place stands for the stretch half way (on the logarithm) to its neighbours.
            double low = i == 0 ? 0 : Normal.CDF(0, 1, Math.Log(Math.Sqrt(places[i - 1] * places[i]) / median) / logSd);
            double high =
                i == places.Length - 1
                    ? 1
                    : Normal.CDF(0, 1, Math.Log(Math.Sqrt(places[i] * places[i + 1]) / median) / logSd);
            weights[i] = high - low;
            sum += weights[i];
        }

        for (int i = 0; i < weights.Length; i++)
        {
            weights[i] /= sum;
        }

        return weights;
    }
}
