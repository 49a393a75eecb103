using System.Runtime.Intrinsics;

namespace Jumpwright.Trials;

/// <summary>
/// How likely an edge's samples are from each of some instants, over all powers, when a spring and damper pass the force on
/// (<see cref="SpringAnswer"/>). Samples and instants are a whole number of steps apart, so that what the spring passes on is read off its
/// table once for each number.
/// </summary>
internal static class SpringScan
{
    /// <summary>Logarithm of how likely each instant is.</summary>
    /// <param name="window">The edge's samples.</param>
    /// <param name="spring">How the plate answers.</param>
    /// <param name="way">+1 for a take-off, −1 for a touch-down.</param>
    /// <param name="rateHz">Sampling rate, Hz.</param>
    /// <param name="instants">The instants.</param>
    /// <param name="logs">Logarithms, one for each instant.</param>
    public static void Of(
        in EdgeWindow window,
        PlateAnswer spring,
        int way,
        double rateHz,
        EdgeInstants instants,
        Span<double> logs
    )
    {
        ReadOnlySpan<double> y = window.ForceN;
        ReadOnlySpan<double> weights = window.Weights[..y.Length];
        ref readonly double table = ref SpringAnswer.Table(SpringAnswer.Nearest(spring.Damping), way)[0];
        double radians = 2 * Math.PI * spring.Hz / rateHz;
        double squares = 0;
        for (int k = 0; k < y.Length; k++)
        {
            squares += weights[k] * y[k] * y[k];
        }

        int steps = ((y.Length - 1) * instants.PerSample) + ((logs.Length - 1) * instants.Stride) + 1;
        Span<Vector512<double>> ones = stackalloc Vector512<double>[steps];
        Span<Vector512<double>> twos = stackalloc Vector512<double>[steps];
        // From the first sample seen from the last instant to the last sample seen from the first; before a touch-down there is nothing.
        double outermost = -window.Outside - instants.At(logs.Length - 1);
        int nothing = way < 0 ? Math.Clamp((int)Math.Floor(-outermost * instants.PerSample) + 1, 0, steps) : 0;
        for (int i = nothing; i < steps; i++)
        {
            double at = (outermost + ((double)i / instants.PerSample)) * radians;
            double row = Math.Clamp(SpringAnswer.EdgeRow + (at * SpringAnswer.Rows), 0, SpringAnswer.LastRow);
            int r = (int)row;
            // The last row that is asked for has one more behind it.
            var column = (nuint)(r * SpringAnswer.Columns);
            Vector512<double> part = Vector512.Create(row - r);
            ones[i] = Between(in table, column, part);
            twos[i] = Between(in table, column + EdgePowers.StepsToOne, part);
        }

        for (int g = 0; g < logs.Length; g++)
        {
            Vector512<double> a = Vector512<double>.Zero;
            Vector512<double> b = a;
            Vector512<double> c = a;
            Vector512<double> d = a;
            Vector512<double> e = a;
            int behind = (logs.Length - 1 - g) * instants.Stride;
            int first = Math.Max((nothing - behind + instants.PerSample - 1) / instants.PerSample, 0);
            for (int k = first; k < y.Length; k++)
            {
                Vector512<double> one = ones[behind + (k * instants.PerSample)];
                Vector512<double> two = twos[behind + (k * instants.PerSample)];
                Vector512<double> w = Vector512.Create(weights[k]);
                Vector512<double> force = Vector512.Create(y[k]);
                Vector512<double> weighted = one * w;
                Vector512<double> higher = two * w;
                a = Vector512.FusedMultiplyAdd(weighted, one, a);
                b = Vector512.FusedMultiplyAdd(weighted, two, b);
                c = Vector512.FusedMultiplyAdd(higher, two, c);
                d = Vector512.FusedMultiplyAdd(weighted, force, d);
                e = Vector512.FusedMultiplyAdd(higher, force, e);
            }

            // What all samples of an instant share, radians to each power, is let in once.
            double scale = 1 / ((window.Reach - instants.At(g)) * radians);
            Vector512<double> lower = Vector512.Exp(EdgePowers.All * Math.Log(scale));
            Vector512<double> upper = lower * scale;
            Vector512<double> explained = EdgePowers.Explained(
                a * lower * lower,
                b * lower * upper,
                c * upper * upper,
                d * lower,
                e * upper,
                window.Top
            );
            logs[g] = OverPowers(EdgePowers.Prior + explained) - (squares / 2);
        }
    }

    private static double OverPowers(Vector512<double> turn)
    {
        double best = double.NegativeInfinity;
        for (int p = 0; p < EdgePowers.Count; p++)
        {
            best = Math.Max(best, turn[p]);
        }

        return best + Math.Log(Vector512.Sum(EdgePowers.Part(turn - Vector512.Create(best))));
    }

    /// <summary>Eight columns of a table from one on, between a row and the next.</summary>
    private static Vector512<double> Between(ref readonly double table, nuint from, Vector512<double> part)
    {
        Vector512<double> low = Vector512.LoadUnsafe(in table, from);
        Vector512<double> high = Vector512.LoadUnsafe(in table, from + SpringAnswer.Columns);
        return Vector512.FusedMultiplyAdd(high - low, part, low);
    }
}
