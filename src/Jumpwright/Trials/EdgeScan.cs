using System.Runtime.Intrinsics;

namespace Jumpwright.Trials;

/// <summary>How likely an edge's samples are from each of some instants, over all powers: eight instants side by side.</summary>
internal static class EdgeScan
{
    /// <summary>The root of a smaller part of an edge vanishes with all its powers.</summary>
    private const double LeastPart = 1e-300;

    /// <summary>Logarithm of how likely each instant is; instants evenly from one end to the other.</summary>
    /// <param name="window">The edge's samples.</param>
    /// <param name="from">First instant, samples inwards.</param>
    /// <param name="to">Last instant, samples inwards.</param>
    /// <param name="beyond">What may be seen beyond the edge.</param>
    /// <param name="logs">Logarithms, one for each instant.</param>
    public static void Of(in EdgeWindow window, double from, double to, in BeyondEdge beyond, Span<double> logs)
    {
        int width = Vector512<double>.Count;
        Span<double> some = stackalloc double[width];
        for (int g = 0; g < logs.Length; g += width)
        {
            int count = Math.Min(width, logs.Length - g);
            some.Fill(to);
            for (int k = 0; k < count; k++)
            {
                some[k] = from + ((to - from) * (g + k) / (logs.Length - 1));
            }

            Vector512<double> starts = Vector512.Create<double>(some);
            (Inside(window, starts) + beyond.Of(window, starts)).CopyTo(some);
            some[..count].CopyTo(logs[g..]);
        }
    }

    /// <summary>What the powers explain of the samples inside of each instant.</summary>
    private static Vector512<double> Inside(in EdgeWindow window, Vector512<double> start)
    {
        // Every power tried, its square and those one higher are whole powers of one root, each one product after the last.
        Span<Vector512<double>> even = stackalloc Vector512<double>[EdgePowers.Count + EdgePowers.StepsToOne];
        Span<Vector512<double>> odd = stackalloc Vector512<double>[EdgePowers.Count];
        Span<Vector512<double>> forces = stackalloc Vector512<double>[EdgePowers.Count + EdgePowers.StepsToOne];
        even.Clear();
        odd.Clear();
        forces.Clear();
        Vector512<double> nothing = Vector512<double>.Zero;
        Vector512<double> squares = nothing;
        Vector512<double> border = start + Vector512.Create((double)window.Outside);
        Vector512<double> full = Vector512.Create(window.Reach) - start;
        for (int k = 0; k < window.ForceN.Length; k++)
        {
            Vector512<double> inside = Vector512.Create((double)k) - border;
            if (!Vector512.GreaterThanAny(inside, nothing))
            {
                continue;
            }

            double y = window.ForceN[k];
            Vector512<double> w = Vector512.Create(window.Weights[k]) & Vector512.GreaterThan(inside, nothing);
            squares += w * (y * y);
            Vector512<double> part = Vector512.Max(inside / full, Vector512.Create(LeastPart));
            Vector512<double> root = Vector512.Exp(Vector512.Log(part) * EdgePowers.Step);
            Vector512<double> two = root * root;
            Vector512<double> three = two * root;
            Vector512<double> force = w * y * three;
            Vector512<double> weighted = w * three * three;
            Vector512<double> between = weighted * two * three;
            for (int m = 0; m < odd.Length; m++)
            {
                odd[m] += between;
                between *= two;
            }

            for (int m = 0; m < even.Length && m < forces.Length; m++)
            {
                even[m] += weighted;
                weighted *= two;
                forces[m] += force;
                force *= root;
            }
        }

        const int bent = EdgePowers.StepsToOne;
        Span<Vector512<double>> turn = stackalloc Vector512<double>[EdgePowers.Count];
        Vector512<double> best = Vector512.Create(double.NegativeInfinity);
        for (int p = 0; p < turn.Length; p++)
        {
            turn[p] =
                Vector512.Create(EdgePowers.PriorOf(p))
                + EdgePowers.Explained(even[p], odd[p], even[p + bent], forces[p], forces[p + bent], window.Top)
                - (squares / 2);
            best = Vector512.Max(best, turn[p]);
        }

        Vector512<double> total = nothing;
        for (int p = 0; p < turn.Length; p++)
        {
            total += EdgePowers.Part(turn[p] - best);
        }

        return best + Vector512.Log(total);
    }
}
