using Jumpwright.Athletes.Profiles;
using Jumpwright.Quantities;
using Jumpwright.Statistics;

namespace Jumpwright.Prescribing.Change;

/// <summary>Noise of a measure in a squad.</summary>
public static class SquadNoises
{
    /// <summary>With fewer athletes the SD between them says too little.</summary>
    private const int EnoughAthletes = 5;

    /// <summary>Smallest worthwhile change where the squad is too small, % of the mean.</summary>
    public static Coefficient FallbackWorthwhile { get; } =
        new("worthwhile-fallback", 2, Unit.Percent, null, Bibliography.Get("house-rule"));

    /// <summary>From every athlete's trend of that key.</summary>
    /// <param name="series">One trend an athlete, all of one key.</param>
    public static SquadNoise Of(IReadOnlyList<Series> series)
    {
        ArgumentNullException.ThrowIfNull(series);
        SeriesKey key = series[0].Key;
        double squares = series.Sum(s => s.Sessions.Sum(x => x.SumOfSquares));
        int freedom = series.Sum(s => s.Sessions.Sum(x => x.Trials - 1));
        double mean = series.Average(s => s.Sessions.Average(x => Math.Abs(x.Mean)));
        double published = TrialErrors.StartingSd(key.Measure, key.Task, mean);
        double typical = TrialScatter.Pooled(squares, freedom, published, TrialErrors.PriorDegreesOfFreedom.Value);
        double? between = null;
        double? icc = null;
        if (series.Count >= EnoughAthletes && freedom > 0)
        {
            // Between athletes: the SD of their means, less what trial noise puts into it.
            double[] means = [.. series.Select(s => s.Sessions.Average(x => x.Mean))];
            double trials = series.Average(s => (double)s.Sessions.Sum(x => x.Trials));
            double variance = Math.Max(0, Math.Pow(Spread.StandardDeviation(means), 2) - (typical * typical / trials));
            between = Math.Sqrt(variance);
            icc = variance / (variance + (typical * typical));
        }

        bool own = between is > 0;
        double worthwhile = own ? 0.2 * between!.Value : FallbackWorthwhile.Value / 100 * mean;
        LevelPrior start = Noise.PriorFor(100 * typical / mean, TrialErrors.PriorDegreesOfFreedom.Value);
        LevelPrior prior = start.LearnedFrom([.. series.Select(s => s.Sessions.ToArray())]);
        return new SquadNoise(
            key,
            series.Count,
            typical,
            100 * typical / mean,
            100 * published / mean,
            freedom,
            between,
            icc,
            worthwhile,
            own ? Bibliography.Get("hopkins-2000") : FallbackWorthwhile.Source,
            Reliability.MinimalDetectableChange(typical, 1.96),
            prior,
            ControlChart.SpreadOf(series.SelectMany(s => LevelBelief.Of(s.Sessions.AsSpan(), prior).Surprise.Skip(1)))
        );
    }
}
