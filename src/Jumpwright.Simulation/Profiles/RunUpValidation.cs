using Jumpwright.Calculators.Bounding;
using Jumpwright.Calculators.Curves;
using Jumpwright.Calculators.RunUps;
using Jumpwright.Simulation.Chance;
using Jumpwright.Statistics;

namespace Jumpwright.Simulation.Profiles;

/// <summary>
/// The run-up curve against athletes whose best speed is known: begun at 2.5 and 3.0 m/s, three jumps each, then three tests where
/// the program asks (or, where it asks for nothing, at 110 % of the fastest run).
/// </summary>
public static class RunUpValidation
{
    private const int Trials = CurveNumbers.TrialsOfATest;

    /// <summary>All athletes, judged.</summary>
    /// <param name="athletes">How many.</param>
    /// <param name="seed">Of the chance.</param>
    public static RunUpReport Run(int athletes, ulong seed = 20270104)
    {
        var results = new One[athletes];
        Parallel.For(0, athletes, i => results[i] = Judge(SeededRandom.For(seed ^ 0xA7, (ulong)i + 1)));
        double[] losses = [.. results.Select(r => r.Loss).Order()];
        return new RunUpReport(
            athletes,
            100 * losses.Average(),
            100 * losses[(int)(0.95 * (athletes - 1))],
            results.Sum(r => r.Above),
            results.Average(r => r.DoubtSuggested) / results.Average(r => r.DoubtRandom),
            results.Average(r => r.LossSuggested) / results.Average(r => r.LossRandom)
        );
    }

    private static One Judge(SeededRandom random)
    {
        double top = random.Uniform(0.30, 0.65);
        double peak = random.Uniform(2.6, 5.5);
        double bend = random.Uniform(0.015, 0.12);
        double noise = random.Uniform(0.03, 0.07);
        double HeightAt(double v) => top * Math.Exp(-bend * (v - peak) * (v - peak));

        List<ApproachTrial> run = [];
        Add(run, 2.5);
        Add(run, 3.0);
        (double doubtSuggested, double lossSuggested, double doubtRandom, double lossRandom) = Compare();
        int above = 0;
        for (int test = 0; test < 3; test++)
        {
            RunUp now = RunUpCurves.Of(new RunUpInput([.. run], 0.85 * top, 0.01)).Require();
            double bound = Bound(run);
            double next = now.NextSpeedMS ?? bound;
            above += next > bound + 1e-9 ? 1 : 0;
            Add(run, next);
        }

        RunUp last = RunUpCurves.Of(new RunUpInput([.. run], 0.85 * top, 0.01) { SeekNext = false }).Require();
        double chosen = last.TwoFeet!.GoodFromMS;
        above += chosen > Bound(run) + 1e-9 ? 1 : 0;
        return new One(LossOf(chosen, run), above, doubtSuggested, doubtRandom, lossSuggested, lossRandom);

        void Add(List<ApproachTrial> to, double speed)
        {
            for (int t = 0; t < Trials; t++)
            {
                double v = speed + (0.05 * random.Normal());
                to.Add(
                    new ApproachTrial(
                        TakeOffFoot.TwoFeet,
                        v,
                        Math.Max(0.03, HeightAt(v) * (1 + (noise * random.Normal())))
                    )
                );
            }
        }

        double Bound(List<ApproachTrial> trials) => trials.Max(t => t.SpeedMS) * Bounds.Share.Value / 100;

        double LossOf(double speed, List<ApproachTrial> trials)
        {
            double best = HeightAt(Math.Clamp(peak, trials.Min(t => t.SpeedMS), Bound(trials)));
            return Math.Max(0, 1 - (HeightAt(speed) / best));
        }

        // The third speed: the suggested one against one drawn from all that would be allowed.
        (double, double, double, double) Compare()
        {
            double low = run.Min(t => t.SpeedMS);
            double high = Bound(run);
            RunUp now = RunUpCurves.Of(new RunUpInput([.. run], 0.85 * top, 0.01)).Require();
            double suggested = now.NextSpeedMS ?? high;
            double drawn = random.Uniform(low, high);
            (double doubtA, double lossA) = After(suggested);
            (double doubtB, double lossB) = After(drawn);
            return (doubtA, lossA, doubtB, lossB);

            (double, double) After(double speed)
            {
                List<ApproachTrial> more = [.. run];
                Add(more, speed);
                PeakedCurve belief = RunUpCurves.Belief(more);
                double[] places = [.. Enumerable.Range(0, 21).Select(i => low + ((high - low) * i / 20))];
                double choice = places.MinBy(v => belief.ExpectedLoss(v, low, high));
                return (
                    belief.ExpectedLoss(choice, low, high),
                    1 - (HeightAt(choice) / HeightAt(Math.Clamp(peak, low, high)))
                );
            }
        }
    }

    private sealed record One(
        double Loss,
        int Above,
        double DoubtSuggested,
        double DoubtRandom,
        double LossSuggested,
        double LossRandom
    );
}
