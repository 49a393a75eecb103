using MathNet.Numerics.Distributions;

namespace Jumpwright.Statistics;

/// <summary>
/// The level of one athlete in one measure, its variances not known: a grid of walk and day-to-day variances with a prior, each a
/// local-level model, weighed by its likelihood session by session. The trial-to-trial variance is pooled with its prior.
/// </summary>
public sealed class LevelBelief
{
    private readonly SessionMean[] _sessions;
    private readonly Model[] _models;

    private LevelBelief(SessionMean[] sessions, Model[] models, double[] surprise)
    {
        _sessions = sessions;
        _models = models;
        Surprise = surprise;
    }

    /// <summary>
    /// For each session how far it lay from what was expected the day before, as a standard normal score: Φ⁻¹ of its predictive
    /// probability. Independent and standard normal while the athlete goes on as before; the first is 0.
    /// </summary>
    public IReadOnlyList<double> Surprise { get; }

    /// <summary>Belief after all sessions.</summary>
    /// <param name="sessions">At least one, in order of day.</param>
    /// <param name="prior">In % of the level; turned into units by the mean of the first three sessions.</param>
    public static LevelBelief Of(ReadOnlySpan<SessionMean> sessions, LevelPrior prior) =>
        Of(sessions, prior, withSurprise: true);

    /// <summary>The likelihoods alone: without the surprises, whose tails of Student's t take most of the time.</summary>
    internal static double[] LikelihoodsOf(ReadOnlySpan<SessionMean> sessions, LevelPrior prior) =>
        Of(sessions, prior, withSurprise: false).RelativeLikelihoods();

    private static LevelBelief Of(ReadOnlySpan<SessionMean> sessions, LevelPrior prior, bool withSurprise)
    {
        ArgumentNullException.ThrowIfNull(prior);
        if (sessions.IsEmpty)
        {
            throw new ArgumentException("A level needs at least one session.", nameof(sessions));
        }

        double scale = 0;
        int first = Math.Min(3, sessions.Length);
        foreach (SessionMean session in sessions[..first])
        {
            scale += Math.Abs(session.Mean) / first;
        }

        int days = LevelPrior.DayPct.Length;
        Model[] models =
        [
            .. Enumerable
                .Range(0, prior.Weights.Length)
                .Where(m => prior.Weights[m] > 0)
                .Select(m =>
                {
                    double week = scale * LevelPrior.WeekPct[m / days] / 100;
                    double day = scale * LevelPrior.DayPct[m % days] / 100;
                    return new Model
                    {
                        Place = m,
                        Walk = week * week / 7,
                        Day = day * day,
                        LogWeight = Math.Log(prior.Weights[m]),
                    };
                }),
        ];
        var surprise = new double[sessions.Length];
        double squares = 0;
        double freedom = 0;
        double startVariance = Math.Pow(prior.TrialPct / 100 * scale, 2);
        for (int i = 0; i < sessions.Length; i++)
        {
            SessionMean session = sessions[i];

            // What the trials scatter is known from the sessions before; this session's own scatter comes in after it was judged.
            double trial = Pooled();
            double tail = 0;
            double sum = 0;
            double top = double.MinValue;
            if (i > 0)
            {
                foreach (Model model in models)
                {
                    top = Math.Max(top, model.LogWeight);
                }

                foreach (Model model in models)
                {
                    model.Variance += model.Walk * Math.Max(0, session.Day - sessions[i - 1].Day);
                    if (!withSurprise)
                    {
                        continue;
                    }

                    double spread = model.Variance + Noise(model, trial, session);
                    double z = (session.Mean - model.Level) / Math.Sqrt(spread);
                    double weight = Math.Exp(model.LogWeight - top);
                    sum += weight;
                    tail += weight * StudentT.CDF(0, 1, 8 + prior.TrialDegreesOfFreedom + freedom, z);
                }

                surprise[i] = withSurprise ? Normal.InvCDF(0, 1, Math.Clamp(tail / sum, 1e-9, 1 - 1e-9)) : double.NaN;
            }

            squares += session.SumOfSquares;
            freedom += session.Trials - 1;
            trial = Pooled();
            foreach (Model model in models)
            {
                double noise = Noise(model, trial, session);
                if (i == 0)
                {
                    model.Level = session.Mean;
                    model.Variance = noise;
                    continue;
                }

                double spread = model.Variance + noise;
                double miss = session.Mean - model.Level;
                double log = -0.5 * (Math.Log(spread) + (miss * miss / spread));
                model.LogWeight += log;
                model.LogLikelihood += log;
                double gain = model.Variance / spread;
                model.Level += gain * miss;
                model.Variance *= 1 - gain;
            }
        }

        double greatest = models.Max(m => m.LogWeight);
        double total = models.Sum(m => Math.Exp(m.LogWeight - greatest));
        foreach (Model model in models)
        {
            model.Weight = Math.Exp(model.LogWeight - greatest) / total;
        }

        return new LevelBelief(sessions.ToArray(), models, surprise) { TrialVariance = Pooled() };

        double Pooled() =>
            (squares + (prior.TrialDegreesOfFreedom * startVariance)) / (freedom + prior.TrialDegreesOfFreedom);
    }

    /// <summary>Pooled trial-to-trial variance.</summary>
    public double TrialVariance { get; private init; }

    /// <summary>The level at the last session: mean and SD.</summary>
    public (double Level, double Sd) Now
    {
        get
        {
            double mean = _models.Sum(m => m.Weight * m.Level);
            double square = _models.Sum(m => m.Weight * (m.Variance + (m.Level * m.Level)));
            return (mean, Math.Sqrt(Math.Max(0, square - (mean * mean))));
        }
    }

    /// <summary>SD by which the level walks in a week, as it seems now.</summary>
    public double WalkPerWeekSd => Math.Sqrt(7 * _models.Sum(m => m.Weight * m.Walk));

    /// <summary>SD of one session's mean about the level, for that many trials.</summary>
    public double SessionSd(int trials) => Math.Sqrt(_models.Sum(m => m.Weight * m.Day) + (TrialVariance / trials));

    /// <summary>The level at each session given all of them: mean and SD.</summary>
    public (double Level, double Sd)[] Smooth()
    {
        var mean = new double[_sessions.Length];
        var square = new double[_sessions.Length];
        foreach (Model model in _models)
        {
            if (model.Weight < 1e-6)
            {
                continue;
            }

            (double Level, double Variance)[] smooth = new LocalLevel(model.Walk).Smooth(Observations(model));
            for (int i = 0; i < smooth.Length; i++)
            {
                mean[i] += model.Weight * smooth[i].Level;
                square[i] += model.Weight * (smooth[i].Variance + (smooth[i].Level * smooth[i].Level));
            }
        }

        double weight = _models.Where(m => m.Weight >= 1e-6).Sum(m => m.Weight);
        return
        [
            .. mean.Select(
                (m, i) => (m / weight, Math.Sqrt(Math.Max(0, (square[i] / weight) - (m / weight * (m / weight)))))
            ),
        ];
    }

    /// <summary>
    /// How far the level moved since an earlier day, and the probabilities that it rose or fell by more than the smallest
    /// worthwhile change.
    /// </summary>
    public LevelChange ChangeSince(double sinceDay, double smallestWorthwhile)
    {
        double mean = 0;
        double square = 0;
        double rose = 0;
        double fell = 0;
        double sum = 0;
        foreach (Model model in _models)
        {
            if (model.Weight < 1e-6)
            {
                continue;
            }

            (double change, double variance) = new LocalLevel(model.Walk).ChangeSince(Observations(model), sinceDay);
            double sd = Math.Sqrt(variance);
            sum += model.Weight;
            mean += model.Weight * change;
            square += model.Weight * (variance + (change * change));
            rose += model.Weight * Likelihood.Above(change, sd, smallestWorthwhile);
            fell += model.Weight * Likelihood.Below(change, sd, -smallestWorthwhile);
        }

        mean /= sum;
        return new LevelChange(
            mean,
            Math.Sqrt(Math.Max(0, (square / sum) - (mean * mean))),
            rose / sum,
            fell / sum,
            smallestWorthwhile
        );
    }

    /// <summary>Likelihood of the sessions under each pair of the prior's grid, the greatest set to 1.</summary>
    private double[] RelativeLikelihoods()
    {
        double top = _models.Max(m => m.LogLikelihood);
        var likelihoods = new double[LevelPrior.WeekPct.Length * LevelPrior.DayPct.Length];
        foreach (Model model in _models)
        {
            likelihoods[model.Place] = Math.Exp(model.LogLikelihood - top);
        }

        return likelihoods;
    }

    private LevelObservation[] Observations(Model model) =>
        [.. _sessions.Select(s => new LevelObservation(s.Day, s.Mean, Noise(model, TrialVariance, s)))];

    private static double Noise(Model model, double trialVariance, SessionMean session) =>
        model.Day + ((trialVariance + session.DeviceVariance) / session.Trials);

    private sealed class Model
    {
        internal int Place { get; init; }

        internal double Walk { get; init; }

        internal double Day { get; init; }

        internal double LogWeight { get; set; }

        internal double LogLikelihood { get; set; }

        internal double Weight { get; set; }

        internal double Level { get; set; }

        internal double Variance { get; set; }
    }
}
