namespace Jumpwright.Trials;

/// <summary>Which answers of a plate explain the edges of its recording, likeliest first (Bayes' rule on a grid, refined where it is sharp).</summary>
internal static class PlateAnswers
{
    /// <summary>A force plate's own frequency under a person, Hz.</summary>
    private const double LeastHz = 90;

    private const double MostHz = 480;
    private const int Frequencies = 13;
    private const int DampingStride = 2;

    /// <summary>How usual each is: a quiet plate, a spring and damper, a swing on top (house estimates).</summary>
    private const double Quiet = 0.8;

    private const double Resonant = 0.15;
    private const double OnTop = 0.05;

    /// <summary>An edge that no answer explains counts for no more than this (in logarithms).</summary>
    private const double MostOfOne = 12;

    /// <summary>No more edges are asked.</summary>
    private const int MostEdges = 6;

    /// <summary>So much likelier (in logarithms) than a quiet plate one answer of a coarse few must be on so many edges.</summary>
    private const double LeastAhead = -1;

    private const int ProbedEdges = 3;

    private static readonly int[] ProbedDampings = [4, 10];

    private const int Refined = 4;

    /// <summary>What can't come this near (in logarithms) to the best by refining is not refined, nor what can't gain so much.</summary>
    private const double WorthRefining = RingingEdges.Negligible;

    private const double LeastGain = 0.5;

    /// <summary>
    /// A parabola's top lies above the highest of evenly spaced points by no more than an eighth of their fall to the lower
    /// neighbour; twice that is allowed for what is no parabola.
    /// </summary>
    private const double GainOfFall = 0.25;

    /// <summary>From this step on in frequency down to that.</summary>
    private const double FirstStep = 0.07;
    private const double LastStep = 0.004;

    public static List<(PlateAnswer? Answer, double Log)> Of(
        ReadOnlySpan<double> forceN,
        double rateHz,
        List<EdgeSide> edges,
        List<(double Hz, double Damping)> swings
    )
    {
        bool mayResonate = Probe(forceN, rateHz, edges);
        if (swings.Count == 0 && !mayResonate)
        {
            return [(null, 0)];
        }

        int asked = Math.Min(edges.Count, MostEdges);
        var found = new List<(PlateAnswer? Answer, double Prior, double[] Logs)>
        {
            (null, Math.Log(Quiet), Ask(forceN, rateHz, edges, asked, null)),
        };
        double each = Math.Log(Resonant / (Frequencies * ((SpringAnswer.Dampings + 1) / DampingStride)));
        for (int i = 0; mayResonate && i < Frequencies; i++)
        {
            for (int j = 0; j < SpringAnswer.Dampings; j += DampingStride)
            {
                var answer = new PlateAnswer(Frequency(i), SpringAnswer.Damping(j), true);
                found.Add((answer, each, Ask(forceN, rateHz, edges, asked, answer)));
            }
        }

        foreach ((double hz, double damping) in swings)
        {
            if (hz is > LeastHz and < MostHz)
            {
                var answer = new PlateAnswer(hz, damping, true);
                found.Add((answer, each, Ask(forceN, rateHz, edges, asked, answer)));
            }

            var top = new PlateAnswer(hz, damping, false);
            found.Add((top, Math.Log(OnTop / swings.Count), Ask(forceN, rateHz, edges, asked, top)));
        }

        double[] best = new double[asked];
        Array.Fill(best, double.NegativeInfinity);
        foreach ((_, _, double[] logs) in found)
        {
            Best(best, logs);
        }

        List<(PlateAnswer? Answer, double Prior, double Log)> all = found.ConvertAll(f =>
            (f.Answer, f.Prior, f.Prior + Sum(f.Logs, best))
        );
        var sorted = all.Select(
                (a, at) => (a.Answer, a.Prior, a.Log, Gain: mayResonate ? GainOf(all, at) : double.PositiveInfinity)
            )
            .ToList();
        sorted.Sort((a, b) => b.Log.CompareTo(a.Log));
        int refined = 0;
        var peaks = new List<(PlateAnswer? Answer, double Prior, double Log)>();
        foreach ((PlateAnswer? answer, double prior, double log, double gain) in sorted)
        {
            if (
                refined == Refined
                || gain < LeastGain
                || log + gain < sorted[0].Log - WorthRefining
                || answer is not { Resonates: true } plate
                || peaks.Exists(p => Near(p.Answer, plate))
            )
            {
                continue;
            }

            refined++;
            peaks.Add(Refine(forceN, rateHz, edges, asked, best, plate, prior, log));
        }

        all.AddRange(peaks.Where(p => !all.Exists(s => s.Answer == p.Answer)));
        all.Sort((a, b) => b.Log.CompareTo(a.Log));
        return all.ConvertAll(s => (s.Answer, s.Log));
    }

    /// <summary>How much likelier (in logarithms) an answer may become by refining it; without bound off the grid.</summary>
    private static double GainOf(List<(PlateAnswer? Answer, double Prior, double Log)> all, int at)
    {
        const int rows = (SpringAnswer.Dampings + 1) / DampingStride;
        int cell = at - 1;
        if (cell is < 0 or >= Frequencies * rows)
        {
            return double.PositiveInfinity;
        }

        double lowest = all[at].Log;
        if (cell >= rows)
        {
            lowest = Math.Min(lowest, all[at - rows].Log);
        }

        if (cell < (Frequencies - 1) * rows)
        {
            lowest = Math.Min(lowest, all[at + rows].Log);
        }

        if (cell % rows > 0)
        {
            lowest = Math.Min(lowest, all[at - 1].Log);
        }

        if (cell % rows < rows - 1)
        {
            lowest = Math.Min(lowest, all[at + 1].Log);
        }

        return GainOfFall * (all[at].Log - lowest);
    }

    /// <summary>Whether some of the answers speak for a spring on the first edges: most plates are quiet, and then this ends it.</summary>
    private static bool Probe(ReadOnlySpan<double> forceN, double rateHz, List<EdgeSide> edges)
    {
        int asked = Math.Min(edges.Count, ProbedEdges);
        double quiet = Ask(forceN, rateHz, edges, asked, null).Sum();
        for (int i = 0; i < Frequencies; i += 2)
        {
            foreach (int damping in ProbedDampings)
            {
                var answer = new PlateAnswer(Frequency(i), SpringAnswer.Damping(damping), true);
                if (Ask(forceN, rateHz, edges, asked, answer).Sum() > quiet + LeastAhead)
                {
                    return true;
                }
            }
        }

        return false;
    }

    private static double Frequency(int index) =>
        LeastHz * Math.Pow(MostHz / LeastHz, (double)index / (Frequencies - 1));

    private static bool Near(PlateAnswer? a, PlateAnswer b) =>
        a is { } one && Math.Abs(Math.Log(one.Hz / b.Hz)) < 0.1 && Math.Abs(Math.Log(one.Damping / b.Damping)) < 0.6;

    private static (PlateAnswer? Answer, double Prior, double Log) Refine(
        ReadOnlySpan<double> forceN,
        double rateHz,
        List<EdgeSide> edges,
        int asked,
        double[] best,
        PlateAnswer plate,
        double prior,
        double log
    )
    {
        double step = FirstStep;
        int damping = SpringAnswer.Nearest(plate.Damping);
        while (step > LastStep)
        {
            (PlateAnswer Answer, double Log) better = (plate, log);
            foreach ((double df, int dd) in ((double, int)[])[(step, 0), (-step, 0), (0, 1), (0, -1)])
            {
                var tried = new PlateAnswer(
                    Math.Clamp(plate.Hz * Math.Exp(df), LeastHz * 0.9, MostHz),
                    SpringAnswer.Damping(Math.Clamp(damping + dd, 0, SpringAnswer.Dampings - 1)),
                    true
                );
                double now = prior + Sum(Ask(forceN, rateHz, edges, asked, tried), best);
                if (now > better.Log)
                {
                    better = (tried, now);
                }
            }

            if (better.Log > log)
            {
                (plate, log) = better;
                damping = SpringAnswer.Nearest(plate.Damping);
            }
            else
            {
                step /= 2;
            }
        }

        return (plate, prior, log);
    }

    private static double[] Ask(
        ReadOnlySpan<double> forceN,
        double rateHz,
        List<EdgeSide> edges,
        int asked,
        PlateAnswer? answer
    )
    {
        double[] logs = new double[asked];
        for (int e = 0; e < asked; e++)
        {
            logs[e] = EdgeFit.Evidence(edges[e], forceN, rateHz, answer, RingingEdges.LookedAtS);
        }

        return logs;
    }

    private static void Best(double[] best, double[] logs)
    {
        for (int e = 0; e < best.Length; e++)
        {
            best[e] = Math.Max(best[e], logs[e]);
        }
    }

    private static double Sum(double[] logs, double[] best)
    {
        double sum = 0;
        for (int e = 0; e < best.Length; e++)
        {
            sum += Math.Max(logs[e] - best[e], -MostOfOne);
        }

        return sum;
    }
}
