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

    /// <summary>Dampings probed; what is damped but lightly swings on, and is asked for only where the plate is not at rest after take-offs.</summary>
    private const int HeavilyDamped = 10;

    private static readonly int[] ProbedDampings = [HeavilyDamped, 4];

    /// <summary>
    /// Take-offs are asked first, for after them a plate that swings shows it. So much less likely (in logarithms) there than what there
    /// is to beat, no touch-down brings an answer back (seen on 60 recordings a task of either simulated population).
    /// </summary>
    private const double Hopeless = 10;

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

    private static readonly (double, int)[] DampingsBeside = [(0, 1), (0, -1)];

    /// <summary>How likely each answer is.</summary>
    /// <param name="edges">The edges.</param>
    /// <param name="swings">Frequencies and dampings that were seen after take-offs.</param>
    /// <param name="unrest">How much less quiet the plate is after take-offs than noise makes it (<see cref="Aftermath.Unrest"/>).</param>
    /// <returns>Answers and the logarithms of how likely they are, likeliest first; a null answer is a quiet plate.</returns>
    public static List<(PlateAnswer? Answer, double Log)> Of(
        AskedEdges edges,
        List<(double Hz, double Damping)> swings,
        double unrest
    )
    {
        bool mayResonate = Probe(edges, unrest);
        if (swings.Count == 0 && !mayResonate)
        {
            return [(null, 0)];
        }

        int[] asked = edges.TakeOffsFirst(MostEdges);
        var found = new List<(PlateAnswer? Answer, double Prior, double[] Logs)>
        {
            (null, Math.Log(Quiet), edges.Of(asked, null)),
        };
        double each = Math.Log(Resonant / (Frequencies * ((SpringAnswer.Dampings + 1) / DampingStride)));
        for (int i = 0; mayResonate && i < Frequencies; i++)
        {
            for (int j = 0; j < SpringAnswer.Dampings; j += DampingStride)
            {
                found.Add(
                    (new PlateAnswer(Frequency(i), SpringAnswer.Damping(j), true), each, new double[asked.Length])
                );
            }
        }

        foreach ((double hz, double damping) in swings)
        {
            if (hz is > LeastHz and < MostHz)
            {
                found.Add((new PlateAnswer(hz, damping, true), each, new double[asked.Length]));
            }

            var top = new PlateAnswer(hz, damping, false);
            found.Add((top, Math.Log(OnTop / swings.Count), new double[asked.Length]));
        }

        AskAll(edges, asked, found);
        double[] best = new double[asked.Length];
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
            peaks.Add(Refine(edges, asked, best, plate, prior, log));
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
    private static bool Probe(AskedEdges edges, double unrest)
    {
        int[] asked = edges.TakeOffsFirst(ProbedEdges);
        foreach (int damping in unrest > Aftermath.UsualOfNoise ? ProbedDampings : [HeavilyDamped])
        {
            for (int i = 0; i < Frequencies; i += 2)
            {
                var answer = new PlateAnswer(Frequency(i), SpringAnswer.Damping(damping), true);
                double ahead = 0;
                foreach (int e in asked)
                {
                    ahead += edges.Of(e, answer) - edges.Of(e, null);
                    if (ahead < LeastAhead - Hopeless)
                    {
                        break;
                    }
                }

                if (ahead > LeastAhead)
                {
                    return true;
                }
            }
        }

        return false;
    }

    /// <summary>
    /// Asks the edges one after the other, and of each only the answers that so far are not hopelessly less likely than another (the first,
    /// a quiet plate, has been asked); the others count as explaining nothing of what they are not asked.
    /// </summary>
    private static void AskAll(
        AskedEdges edges,
        int[] asked,
        List<(PlateAnswer? Answer, double Prior, double[] Logs)> found
    )
    {
        double[] soFar = [.. found.Select(f => f.Prior)];
        for (int e = 0; e < asked.Length; e++)
        {
            double hopeless = soFar.Max() - MostOfOne - Hopeless;
            for (int a = 0; a < found.Count; a++)
            {
                double[] logs = found[a].Logs;
                if (a > 0)
                {
                    logs[e] = soFar[a] < hopeless ? double.NegativeInfinity : edges.Of(asked[e], found[a].Answer);
                }

                soFar[a] += logs[e];
            }
        }
    }

    private static double Frequency(int index) =>
        LeastHz * Math.Pow(MostHz / LeastHz, (double)index / (Frequencies - 1));

    private static bool Near(PlateAnswer? a, PlateAnswer b) =>
        a is { } one && Math.Abs(Math.Log(one.Hz / b.Hz)) < 0.1 && Math.Abs(Math.Log(one.Damping / b.Damping)) < 0.6;

    private static (PlateAnswer? Answer, double Prior, double Log) Refine(
        AskedEdges edges,
        int[] asked,
        double[] best,
        PlateAnswer plate,
        double prior,
        double log
    )
    {
        double step = FirstStep;
        int damping = SpringAnswer.Nearest(plate.Damping);
        // Where only the step is another, dampings beside have been asked.
        bool moved = true;
        while (step > LastStep)
        {
            (PlateAnswer Answer, double Log) better = (plate, log);
            foreach ((double df, int dd) in ((double, int)[])[(step, 0), (-step, 0), .. moved ? DampingsBeside : []])
            {
                var tried = new PlateAnswer(
                    Math.Clamp(plate.Hz * Math.Exp(df), LeastHz * 0.9, MostHz),
                    SpringAnswer.Damping(Math.Clamp(damping + dd, 0, SpringAnswer.Dampings - 1)),
                    true
                );
                double now = tried == plate ? log : prior + Sum(edges.Of(asked, tried), best);
                if (now > better.Log)
                {
                    better = (tried, now);
                }
            }

            moved = better.Log > log;
            if (moved)
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
