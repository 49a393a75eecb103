namespace Jumpwright.Statistics;

/// <summary>
/// A level that moves as a random walk and is seen through noise: y = level + noise, level_next = level + walk. The local-level
/// state-space model over irregular dates, its variances known; Kalman filter with an exactly diffuse start, and the smoother.
/// Sources: Kalman 1960, J Basic Eng 82:35–45; Durbin and Koopman 2001 (both from memory).
/// </summary>
/// <param name="WalkVariancePerDay">Variance that the level gains a day.</param>
public sealed record LocalLevel(double WalkVariancePerDay)
{
    /// <summary>Filter over all observations in order of date.</summary>
    /// <param name="observations">At least one, in order; the same day twice is allowed.</param>
    public FilteredLevel[] Filter(ReadOnlySpan<LevelObservation> observations)
    {
        var steps = new FilteredLevel[observations.Length];
        double level = 0;
        double variance = double.PositiveInfinity;
        double day = 0;
        for (int i = 0; i < observations.Length; i++)
        {
            LevelObservation seen = observations[i];
            double predictedVariance =
                i == 0 ? double.PositiveInfinity : variance + (WalkVariancePerDay * Math.Max(0, seen.Day - day));
            double predicted = level;
            if (double.IsPositiveInfinity(predictedVariance))
            {
                level = seen.Value;
                variance = seen.NoiseVariance;
            }
            else
            {
                double gain = predictedVariance / (predictedVariance + seen.NoiseVariance);
                level = predicted + (gain * (seen.Value - predicted));
                variance = predictedVariance * (1 - gain);
            }

            day = seen.Day;
            steps[i] = new FilteredLevel(seen.Day, predicted, predictedVariance, level, variance);
        }

        return steps;
    }

    /// <summary>
    /// Log-likelihood of the observations given the first (which only tells where the level starts).
    /// </summary>
    public double LogLikelihood(ReadOnlySpan<LevelObservation> observations)
    {
        FilteredLevel[] steps = Filter(observations);
        double log = 0;
        for (int i = 1; i < steps.Length; i++)
        {
            double spread = steps[i].PredictedVariance + observations[i].NoiseVariance;
            double miss = observations[i].Value - steps[i].Predicted;
            log -= 0.5 * (Math.Log(2 * Math.PI * spread) + (miss * miss / spread));
        }

        return log;
    }

    /// <summary>The level at each observation given all of them (fixed-interval smoother).</summary>
    public (double Level, double Variance)[] Smooth(ReadOnlySpan<LevelObservation> observations)
    {
        FilteredLevel[] steps = Filter(observations);
        var smooth = new (double Level, double Variance)[steps.Length];
        if (steps.Length == 0)
        {
            return smooth;
        }

        smooth[^1] = (steps[^1].Level, steps[^1].Variance);
        for (int i = steps.Length - 2; i >= 0; i--)
        {
            double next = steps[i + 1].PredictedVariance;
            double back = next > 0 ? steps[i].Variance / next : 1;
            smooth[i] = (
                steps[i].Level + (back * (smooth[i + 1].Level - steps[i + 1].Predicted)),
                steps[i].Variance + (back * back * (smooth[i + 1].Variance - next))
            );
        }

        return smooth;
    }

    /// <summary>
    /// How far the level moved since an earlier day: mean and variance of level at the last observation less level at the last
    /// observation on or before that day, given all observations; (0, 0) when that is the last one itself.
    /// </summary>
    public (double Change, double Variance) ChangeSince(ReadOnlySpan<LevelObservation> observations, double sinceDay)
    {
        FilteredLevel[] steps = Filter(observations);
        int from = 0;
        for (int i = 0; i < steps.Length && steps[i].Day <= sinceDay; i++)
        {
            from = i;
        }

        // Two states, level now and level then, from the fork on.
        double now = steps[from].Level;
        double then = now;
        double varNow = steps[from].Variance;
        double varThen = varNow;
        double covariance = varNow;
        for (int i = from + 1; i < steps.Length; i++)
        {
            varNow += WalkVariancePerDay * Math.Max(0, steps[i].Day - steps[i - 1].Day);
            double spread = varNow + observations[i].NoiseVariance;
            double miss = observations[i].Value - now;
            double gainNow = varNow / spread;
            double gainThen = covariance / spread;
            now += gainNow * miss;
            then += gainThen * miss;
            varThen -= gainThen * covariance;
            covariance -= gainThen * varNow;
            varNow -= gainNow * varNow;
        }

        return (now - then, Math.Max(0, varNow + varThen - (2 * covariance)));
    }

    /// <summary>
    /// Greatest likelihood over walk and noise variance for evenly spread single observations (a day apart or any), by a coordinate
    /// search on logarithms.
    /// </summary>
    public static (double WalkVariancePerDay, double NoiseVariance, double LogLikelihood) Fit(
        ReadOnlySpan<double> days,
        ReadOnlySpan<double> values
    )
    {
        double[] when = days.ToArray();
        double[] what = values.ToArray();
        if (when.Length != what.Length || when.Length < 4)
        {
            throw new ArgumentException("Four observations at least are needed.", nameof(values));
        }

        double mean = what.Average();
        double variance = what.Sum(v => (v - mean) * (v - mean)) / (what.Length - 1);
        var observations = new LevelObservation[what.Length];

        double At(double walk, double noise)
        {
            for (int i = 0; i < observations.Length; i++)
            {
                observations[i] = new LevelObservation(when[i], what[i], Math.Exp(noise));
            }

            return new LocalLevel(Math.Exp(walk)).LogLikelihood(observations);
        }

        double span = Math.Max(1, (when[^1] - when[0]) / (when.Length - 1));
        (double W, double N) best = (Math.Log(variance / span / 10), Math.Log(variance / 2));
        double top = At(best.W, best.N);
        for (double step = 2; step > 1e-7; )
        {
            bool moved = false;
            foreach (
                (double w, double n) in (ReadOnlySpan<(double, double)>)
                    [
                        (best.W + step, best.N),
                        (best.W - step, best.N),
                        (best.W, best.N + step),
                        (best.W, best.N - step),
                        (best.W + step, best.N - step),
                        (best.W - step, best.N + step),
                    ]
            )
            {
                double log = At(w, n);
                if (log > top)
                {
                    (best, top, moved) = ((w, n), log, true);
                }
            }

            if (!moved)
            {
                step /= 2;
            }

            if (best.W < -60 || best.N < -60)
            {
                break;
            }
        }

        return (Math.Exp(best.W), Math.Exp(best.N), top);
    }
}
