namespace Jumpwright.Trials;

/// <summary>
/// Where an edge of the force ends: near its end a force is its time from there to some power, and nobody knows
/// which (a stiff impact jumps, a soft one rolls in). So every power and every instant is held against the samples, and the
/// instant is the mean of what remains likely, its doubt the spread of that (Bayes' rule on a grid; house model). On a plate
/// that swings the same is done through the plate (<see cref="PlateAnswer"/>).
/// </summary>
internal static class EdgeFit
{
    /// <summary>Instants told of an edge.</summary>
    public const int Points = Fine + 1;

    /// <summary>So much less likely (in logarithms) than another, something adds nothing to it.</summary>
    private const double Lost = 45;

    /// <summary>Nor farther in than this, s.</summary>
    private const double InwardsS = 0.004;

    /// <summary>A plate's swing moves an edge no farther than this from a first reading, s and samples.</summary>
    private const double NearS = 0.003;

    private const double NearSamples = 2.2;

    /// <summary>
    /// A spring moves it by chance no farther than this, s and samples, or so many of the first reading's doubts, and by its lag no farther than so
    /// many radians (seen on both simulated populations: 3 of 470 edges lay farther).
    /// </summary>
    private const double NearSpringS = 0.001;

    private const double NearSpringSamples = 1.2;
    private const double NearDoubts = 3;
    private const double MostLag = 2;

    /// <summary>On a plate that swings the first sample below its swing may lie so many times farther out.</summary>
    private const double SwingInwards = 1.6;

    private const int Coarse = 24;
    private const int Fine = 20;

    /// <summary>So much less likely (in logarithms), an instant is left out.</summary>
    private const double Negligible = 8;

    /// <summary>Where the farthest instant asked is no less likely than this (in logarithms), the edge may lie beyond it.</summary>
    private const double ReachesBeyond = 3;

    /// <summary>Fits one edge of a quiet plate.</summary>
    /// <param name="edge">The edge.</param>
    /// <param name="forceN">Force, N.</param>
    /// <param name="rateHz">Sampling rate, Hz.</param>
    /// <returns>The instant; null where there are too few samples.</returns>
    public static Instant? Of(in EdgeSide edge, ReadOnlySpan<double> forceN, double rateHz)
    {
        Span<double> at = stackalloc double[Points];
        Span<double> logs = stackalloc double[Points];
        if (!TryTell(edge, forceN, rateHz, null, 0, at, logs, out bool cut))
        {
            return null;
        }

        double best = Samples.Greatest(logs);
        for (int k = 0; k < Points; k++)
        {
            logs[k] = Math.Exp(logs[k] - best);
        }

        return EdgePosterior.Tell(edge, rateHz, at, logs, at[1] - at[0]) with
        {
            Unsettled = cut,
        };
    }

    /// <summary>Instants of one edge, as the plate is believed to answer, with how likely the samples are from each.</summary>
    /// <param name="edge">The edge.</param>
    /// <param name="forceN">Force, N.</param>
    /// <param name="rateHz">Sampling rate, Hz.</param>
    /// <param name="answer">How the plate answers; null for a quiet one.</param>
    /// <param name="ringsS">How long beyond the edge the plate is looked at, s; 0 for a quiet one.</param>
    /// <param name="at">Instants, samples inwards, evenly apart.</param>
    /// <param name="logs">Logarithms of the likelihoods.</param>
    /// <param name="cut">True where the edge may well lie farther out than was asked.</param>
    /// <returns>False where there are too few samples.</returns>
    public static bool TryTell(
        in EdgeSide edge,
        ReadOnlySpan<double> forceN,
        double rateHz,
        PlateAnswer? answer,
        double ringsS,
        Span<double> at,
        Span<double> logs,
        out bool cut
    )
    {
        Span<double> room = stackalloc double[EdgeWindow.Room(rateHz, ringsS)];
        cut = false;
        if (!EdgeWindow.TryTake(edge, forceN, rateHz, ringsS, room, out EdgeWindow window))
        {
            return false;
        }

        (double from, double to) = Range(edge, window, rateHz, answer);
        if (answer is { Resonates: true } spring)
        {
            EdgeInstants wide = Widely(from, to, rateHz);
            Span<double> widely = stackalloc double[wide.Count];
            SpringScan.Of(window, spring, edge.Way, rateHz, wide, widely);
            (int first, int last) = Likely(widely);
            EdgeInstants near = EdgeInstants.Reaching(
                wide.At(Math.Max(first - 1, 0)),
                wide.At(Math.Min(last + 1, wide.Count - 1)),
                Fine
            );
            SpringScan.Of(window, spring, edge.Way, rateHz, near, logs);
            from = near.From;
            to = near.At(Fine);
        }
        else
        {
            var beyond = BeyondEdge.Of(answer, edge.Way, rateHz);
            Span<double> coarse = stackalloc double[Coarse + 1];
            EdgeScan.Of(window, from, to, beyond, coarse);
            (int low, int high) = Likely(coarse);
            double step = (to - from) / Coarse;
            (from, to) = (Math.Max(from, from + ((low - 1) * step)), Math.Min(to, from + ((high + 1) * step)));
            EdgeScan.Of(window, from, to, beyond, logs);
        }

        for (int k = 0; k < Points; k++)
        {
            at[k] = from + ((to - from) * k / Fine);
        }

        cut = from <= window.Earliest && logs[0] > Samples.Greatest(logs) - ReachesBeyond;

        return true;
    }

    /// <summary>Whether an edge has samples enough to be told.</summary>
    public static bool HasSamples(in EdgeSide edge, ReadOnlySpan<double> forceN, double rateHz, double ringsS)
    {
        Span<double> room = stackalloc double[EdgeWindow.Room(rateHz, ringsS)];
        return EdgeWindow.TryTake(edge, forceN, rateHz, ringsS, room, out _);
    }

    /// <summary>
    /// Logarithm of how likely the samples of an edge are over all its instants, as the plate is believed to answer; NaN where there are too few.
    /// </summary>
    public static double Evidence(
        in EdgeSide edge,
        ReadOnlySpan<double> forceN,
        double rateHz,
        PlateAnswer? answer,
        double ringsS
    )
    {
        Span<double> room = stackalloc double[EdgeWindow.Room(rateHz, ringsS)];
        if (!EdgeWindow.TryTake(edge, forceN, rateHz, ringsS, room, out EdgeWindow window))
        {
            return double.NaN;
        }

        (double from, double to) = Range(edge, window, rateHz, answer);
        if (answer is { Resonates: true } spring)
        {
            EdgeInstants wide = Widely(from, to, rateHz);
            Span<double> widely = stackalloc double[wide.Count];
            SpringScan.Of(window, spring, edge.Way, rateHz, wide, widely);
            return LogSum(widely) + Math.Log(wide.Step);
        }

        Span<double> coarse = stackalloc double[Coarse + 1];
        EdgeScan.Of(window, from, to, BeyondEdge.Of(answer, edge.Way, rateHz), coarse);
        return LogSum(coarse) + Math.Log((to - from) / Coarse);
    }

    /// <summary>Instants for a first look at an edge that a spring passes on.</summary>
    private static EdgeInstants Widely(double from, double to, double rateHz) =>
        EdgeInstants.Over(from, to, Math.Max(to - from, 2 * Near(rateHz)), Coarse);

    /// <summary>First and last of what is not negligible beside the likeliest.</summary>
    private static (int First, int Last) Likely(ReadOnlySpan<double> logs)
    {
        double least = Samples.Greatest(logs) - Negligible;
        int first = 0;
        int last = logs.Length - 1;
        while (logs[first] < least)
        {
            first++;
        }

        while (logs[last] < least)
        {
            last--;
        }

        return (first, last);
    }

    /// <summary>Logarithm of the sum of what logarithms stand for.</summary>
    public static double LogSum(ReadOnlySpan<double> logs)
    {
        double best = Samples.Greatest(logs);
        double sum = 0;
        foreach (double log in logs)
        {
            // Less is lost in rounding, and dear to reckon.
            sum += log > best - Lost ? Math.Exp(log - best) : 0;
        }

        return best + Math.Log(sum);
    }

    /// <summary>From where to where an edge is looked for, samples inwards of its first one.</summary>
    private static (double From, double To) Range(
        in EdgeSide edge,
        in EdgeWindow window,
        double rateHz,
        PlateAnswer? answer
    )
    {
        // What looked loaded may have been the plate's ringing.
        double inwards = Math.Max(InwardsS * rateHz, 2.5) * (window.Swings ? SwingInwards : 1);
        double to = Math.Clamp(window.Reach - EdgeWindow.Fewest + 1, 1, inwards);
        if (double.IsNaN(edge.About))
        {
            return (window.Earliest, to);
        }

        double about = Math.Clamp(edge.About, window.Earliest, to);
        double near = Near(rateHz);
        if (answer is not { Resonates: true } spring)
        {
            return (Math.Max(window.Earliest, about - near), Math.Min(to, about + near));
        }

        // A spring shows everything later: what is seen of a take-off lies outwards of it, of a touch-down inwards.
        double chance = Math.Max(Math.Max(NearSpringS * rateHz, NearDoubts * edge.AboutU), NearSpringSamples);
        double late = chance + (MostLag / (2 * Math.PI * spring.Hz) * rateHz);
        (double outwards, double inner) = edge.Way > 0 ? (chance, late) : (late, chance);
        return (
            Math.Max(window.Earliest, about - Math.Min(outwards, near)),
            Math.Min(to, about + Math.Min(inner, near))
        );
    }

    /// <summary>How far from a first reading an edge may lie, samples.</summary>
    private static double Near(double rateHz) => Math.Max(NearS * rateHz, NearSamples);
}
