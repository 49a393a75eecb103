using Jumpwright.Simulation.Chance;
using Jumpwright.Statistics;

namespace Jumpwright.Simulation.Profiles;

/// <summary>
/// A simulated athlete with one measure whose level is known at every session, seen through noise of the day and noise of the trial:
/// a third stay where they are, a third take a real step of 5 % at a known session, a third walk all the time. Drawn from even ranges, not from the belief that is tested on them.
/// </summary>
/// <param name="Sessions">What was measured.</param>
/// <param name="Levels">The true level at each.</param>
/// <param name="WalkVariancePerDay">True variance of the walk.</param>
/// <param name="DayVariance">True variance from day to day.</param>
/// <param name="TrialVariance">True variance of a trial.</param>
/// <param name="StepAt">Session of the step; null without one.</param>
/// <param name="StepUp">Direction of the step.</param>
public sealed record LevelAthlete(
    SessionMean[] Sessions,
    double[] Levels,
    double WalkVariancePerDay,
    double DayVariance,
    double TrialVariance,
    int? StepAt,
    bool StepUp
)
{
    /// <summary>Size of the real change, of the level.</summary>
    public const double Step = 0.05;

    public static LevelAthlete Draw(ulong seed, int number, int sessions)
    {
        SeededRandom random = SeededRandom.For(seed, (ulong)number + 1);
        double level = random.Uniform(0.22, 0.55);
        double trial = level * random.Uniform(0.025, 0.080);
        double day = level * random.Uniform(0.010, 0.040);
        int kind = random.Below(3);
        double week = kind == 0 ? level * random.Uniform(0.002, 0.012) : 0;
        double walk = week * week / 7;
        int? stepAt = kind == 1 ? 15 + random.Below(11) : null;
        bool up = random.Chance(0.5);
        double date = 0;
        var seen = new SessionMean[sessions];
        var levels = new double[sessions];
        for (int i = 0; i < sessions; i++)
        {
            double gap = i == 0 ? 0 : 2 + random.Below(9);
            if (random.Chance(0.1))
            {
                gap += 7 + random.Below(15);
            }

            date += gap;
            level += Math.Sqrt(walk * gap) * random.Normal();
            if (i == stepAt)
            {
                level *= up ? 1 + Step : 1 - Step;
            }

            levels[i] = level;
            double today = level + (day * random.Normal());
            var trials = new double[2 + random.Below(3)];
            for (int t = 0; t < trials.Length; t++)
            {
                trials[t] = today + (trial * random.Normal());
            }

            seen[i] = SessionMean.Of(date, trials);
        }

        return new LevelAthlete(seen, levels, walk, day * day, trial * trial, stepAt, up);
    }

    /// <summary>Surprise of each session to a filter that knows the true variances: the best that can be done.</summary>
    public double[] SurpriseWithKnownVariances()
    {
        LevelObservation[] observations =
        [
            .. Sessions.Select(s => new LevelObservation(s.Day, s.Mean, DayVariance + (TrialVariance / s.Trials))),
        ];
        FilteredLevel[] steps = new LocalLevel(WalkVariancePerDay).Filter(observations);
        return
        [
            .. steps.Select(
                (s, i) =>
                    i == 0
                        ? 0
                        : (observations[i].Value - s.Predicted)
                            / Math.Sqrt(s.PredictedVariance + observations[i].NoiseVariance)
            ),
        ];
    }
}
