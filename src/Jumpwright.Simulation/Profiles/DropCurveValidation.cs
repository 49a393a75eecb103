using Jumpwright.Calculators.Curves;
using Jumpwright.Simulation.Chance;
using Jumpwright.Statistics;

namespace Jumpwright.Simulation.Profiles;

/// <summary>The drop curve against athletes whose curve is known.</summary>
public static class DropCurveValidation
{
    private const int Trials = CurveNumbers.TrialsOfATest;

    /// <summary>All athletes, judged.</summary>
    /// <param name="athletes">How many.</param>
    /// <param name="seed">Of the chance.</param>
    /// <param name="prior">What is believed of such curves before; the house's when null.</param>
    public static DropCurveReport Run(int athletes, ulong seed = 20270104, CurvePrior? prior = null)
    {
        CurvePrior belief = prior ?? CurveNumbers.Drop;
        var results = new One[athletes];
        Parallel.For(0, athletes, i => results[i] = Judge(SeededRandom.For(seed ^ 0xD0, (ulong)i + 1), belief));
        double[] losses = [.. results.Select(r => r.Loss).Order()];
        return new DropCurveReport(
            athletes,
            losses.Count(l => l < 0.03) / (double)athletes,
            results.Count(r => r.LossAmongJumped < 0.03) / (double)athletes,
            100 * losses.Average(),
            100 * losses[(int)(0.95 * (athletes - 1))],
            results.Sum(r => r.Above),
            results.Sum(r => r.TooHigh),
            results.Average(r => r.DoubtSuggested) / results.Average(r => r.DoubtRandom),
            Math.Sqrt(results.Average(r => r.MissSuggested * r.MissSuggested))
                / Math.Sqrt(results.Average(r => r.MissRandom * r.MissRandom))
        );
    }

    private static One Judge(SeededRandom random, CurvePrior prior)
    {
        DropCurveAthlete athlete = DropCurveAthlete.Draw(random);
        int above = 0;
        int tooHigh = 0;
        List<DropJumpTrial> jumped = [];
        Add(jumped, 0.20);
        Add(jumped, 0.30);
        (double doubtSuggested, double missSuggested, double doubtRandom, double missRandom) = Compare();
        for (int height = 2; height < 4; height++)
        {
            DropCurve now = Curve(jumped);
            double highest = jumped.Max(t => t.DropM);
            double next = now.NextDropM ?? Math.Min(athlete.LimitM, highest + 0.10);
            above += now.NextDropM > athlete.LimitM + 1e-9 ? 1 : 0;
            tooHigh += now.NextDropM > highest + 0.10 + 1e-9 ? 1 : 0;
            Add(jumped, next);
        }

        DropCurve chosen = Curve(jumped);
        above += chosen.ChosenM > athlete.LimitM + 1e-9 ? 1 : 0;
        double best = athlete.BestUpTo(athlete.LimitM);
        return new One(
            1 - (athlete.IndexAt(chosen.ChosenM) / best),
            1
                - (
                    athlete.IndexAt(chosen.ChosenM)
                    / athlete.BestUpTo(Math.Min(athlete.LimitM, jumped.Max(t => t.DropM)))
                ),
            above,
            tooHigh,
            doubtSuggested,
            doubtRandom,
            missSuggested,
            missRandom
        );

        void Add(List<DropJumpTrial> to, double dropM)
        {
            for (int t = 0; t < Trials; t++)
            {
                to.Add(athlete.Jump(dropM, random));
            }
        }

        DropCurve Curve(List<DropJumpTrial> trials) =>
            DropCurves.Of(new DropCurveInput([.. trials], athlete.LimitM) { Prior = prior }).Require();

        // The third height: the suggested one against one drawn from all that would be allowed.
        (double, double, double, double) Compare()
        {
            double ceiling = Math.Min(athlete.LimitM, 0.40);
            DropCurve now = Curve(jumped);
            double suggested = now.NextDropM ?? ceiling;
            int choices = (int)Math.Round((ceiling - 0.10) / 0.05) + 1;
            double drawn = Math.Round(0.10 + (0.05 * random.Below(choices)), 2);
            (double doubtA, double missA) = After(suggested);
            (double doubtB, double missB) = After(drawn);
            return (doubtA, missA, doubtB, missB);

            (double Doubt, double Miss) After(double dropM)
            {
                List<DropJumpTrial> more = [.. jumped];
                Add(more, dropM);
                PeakedCurve curve = PeakedCurve.Of([.. more.Select(t => new CurvePoint(t.DropM, t.Index))], prior);
                (double place, double sd) = curve.BestPlace(0.10, ceiling);
                return (sd, place - Math.Clamp(athlete.PeakM, 0.10, ceiling));
            }
        }
    }

    private sealed record One(
        double Loss,
        double LossAmongJumped,
        int Above,
        int TooHigh,
        double DoubtSuggested,
        double DoubtRandom,
        double MissSuggested,
        double MissRandom
    );
}
