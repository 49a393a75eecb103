using System.Numerics;
using System.Runtime.InteropServices;

namespace Jumpwright.Trials;

/// <summary>
/// Where an edge of the force ends on a quiet plate: near its end a force is its time from there to some power, and nobody knows
/// which (a stiff impact jumps, a soft one rolls in). So every power and every instant is held against the samples, and the
/// instant is the mean of what remains likely, its doubt the spread of that (Bayes' rule on a grid; house model).
/// </summary>
internal static class EdgeFit
{
    /// <summary>Powers tried: as many as fill whole vectors.</summary>
    private const int Powers = 8;

    private const double LeastPower = 0.6;
    private const double PowerStep = 0.2;

    /// <summary>The usual power and its spread (house estimate: straight to a little round).</summary>
    private const double UsualPower = 1.1;

    private const double PowerSpread = 0.3;

    /// <summary>How far the force bends away from its power within the part looked at, part of its top (house estimate).</summary>
    private const double Bend = 0.2;

    /// <summary>What no such curve explains, part of the force (house estimate).</summary>
    private const double Misfit = 0.01;

    /// <summary>Part of the load up to which the edge is looked at, for how long, and over how many samples at least.</summary>
    private const double TopPart = 0.4;

    private const double LongestS = 0.02;
    private const int Fewest = 3;

    /// <summary>No edge ends farther out from its last surely loaded sample than this, s.</summary>
    private const double FarthestS = 0.009;

    /// <summary>Nor farther in than this, s.</summary>
    private const double InwardsS = 0.004;

    /// <summary>
    /// One plate in four rings on right beyond an edge, by about this part of the load at first and for about so long, s (house
    /// estimate, held by validation): what is not nothing there need not be the person's.
    /// </summary>
    private const double Rings = 0.25;

    private const double RingsPart = 0.03;
    private const double RingsS = 0.005;

    /// <summary>What ±2u is to hold.</summary>
    private const double Held = 0.9545;

    private const int Coarse = 24;
    private const int Fine = 20;

    /// <summary>So much less likely (in logarithms), an instant is left out.</summary>
    private const double Negligible = 8;

    /// <summary>What remains open beside all that, s.</summary>
    private const double LeastS = 0.00005;

    private static readonly double[] PowerLogs =
    [
        .. Enumerable
            .Range(0, Powers)
            .Select(k => -Math.Pow((LeastPower + (k * PowerStep) - UsualPower) / PowerSpread, 2) / 2),
    ];

    /// <summary>Fits one edge.</summary>
    /// <param name="forceN">Force, N.</param>
    /// <param name="rateHz">Sampling rate, Hz.</param>
    /// <param name="first">First sample on the empty side that is not surely loaded.</param>
    /// <param name="way">Step from the loaded side to the empty one, ±1.</param>
    /// <param name="zeroN">Force of the empty plate there, N.</param>
    /// <param name="noiseN">Standard deviation of a sample, N.</param>
    /// <param name="loadN">Usual load, N.</param>
    /// <returns>The instant; null where there are too few samples.</returns>
    public static Instant? Of(
        ReadOnlySpan<double> forceN,
        double rateHz,
        int first,
        int way,
        double zeroN,
        double noiseN,
        double loadN
    )
    {
        int outside = Math.Max((int)(FarthestS * rateHz), 2);
        int longest = Math.Max((int)(LongestS * rateHz), Fewest);
        Span<double> y = stackalloc double[outside + longest + 1];
        int n = 0;
        for (int k = -outside; k <= longest; k++)
        {
            int j = first - (way * k);
            if (j < 0 || j >= forceN.Length)
            {
                if (k > 0)
                {
                    break;
                }

                outside = -k - 1;
                n = 0;
                continue;
            }

            double f = forceN[j] - zeroN;
            // Up to the top, or to where the force turns.
            if (k > Fewest && (f > TopPart * loadN || f < y[n - 1] - (4 * noiseN)))
            {
                break;
            }

            y[n++] = f;
        }

        if (n - outside <= Fewest)
        {
            return null;
        }

        y = y[..n];
        double top = Math.Max(Samples.Greatest(y), 1);
        double reach = n - 1 - outside;
        Span<double> weights = stackalloc double[n];
        double white = Math.Max(noiseN, 0.3) * Math.Max(noiseN, 0.3);
        for (int k = 0; k < n; k++)
        {
            double misfit = Misfit * Math.Max(y[k], 0);
            weights[k] = 1 / (white + (misfit * misfit));
        }

        double rings = RingsPart * loadN * RingsPart * loadN;
        double decay = 2 / (RingsS * rateHz);
        Span<double> logs = stackalloc double[Math.Max(Coarse, Fine) + 1];
        double from = -outside;
        // What looked loaded may have been the plate's ringing.
        double to = Math.Clamp(reach - Fewest + 1, 1, Math.Max(InwardsS * rateHz, 2.5));
        Scan(y, weights, outside, reach, top, rings, decay, from, to, logs[..(Coarse + 1)]);
        double best = Samples.Greatest(logs[..(Coarse + 1)]);
        int low = 0;
        int high = Coarse;
        while (logs[low] < best - Negligible)
        {
            low++;
        }

        while (logs[high] < best - Negligible)
        {
            high--;
        }

        double step = (to - from) / Coarse;
        (from, to) = (Math.Max(from, from + ((low - 1) * step)), Math.Min(to, from + ((high + 1) * step)));
        Span<double> fine = logs[..(Fine + 1)];
        Scan(y, weights, outside, reach, top, rings, decay, from, to, fine);
        best = Samples.Greatest(fine);
        double sum = 0;
        double mean = 0;
        double squares = 0;
        for (int k = 0; k <= Fine; k++)
        {
            double part = Math.Exp(fine[k] - best);
            double at = from + ((to - from) * k / Fine);
            sum += part;
            mean += part * at;
            squares += part * at * at;
        }

        mean /= sum;
        double spread = Math.Sqrt(Math.Max((squares / sum) - (mean * mean), 0));
        // Two instants apart, one likely and one less: the width that holds 95.45 % tells of both (decision 21).
        double width = 0;
        double held = double.NegativeInfinity;
        for (int k = 0; k <= Fine; k++)
        {
            double half = Math.Abs(from + ((to - from) * k / Fine) - mean);
            double within = 0;
            for (int j = 0; j <= Fine; j++)
            {
                double off = Math.Abs(from + ((to - from) * j / Fine) - mean);
                within += off <= half ? Math.Exp(fine[j] - best) : 0;
            }

            if (within >= Held * sum && (held < 0 || half < width))
            {
                (width, held) = (half, within);
            }
        }

        spread = Math.Max(spread, width / 2);
        double grid = (to - from) / Fine / 4;
        return new Instant(
            first - (way * mean),
            PushMeasures.Quadrature(PushMeasures.Quadrature(spread, grid) / rateHz, LeastS)
        );
    }

    /// <summary>Logarithm of how likely each instant is, over all powers; instants evenly from one end to the other.</summary>
    private static void Scan(
        ReadOnlySpan<double> y,
        ReadOnlySpan<double> weights,
        int outside,
        double reach,
        double top,
        double rings,
        double decay,
        double from,
        double to,
        Span<double> logs
    )
    {
        int count = logs.Length;
        Span<double> power = stackalloc double[Powers];
        Span<double> turn = stackalloc double[Powers];
        Span<double> sums = stackalloc double[5 * Powers];
        Span<Vector<double>> s = MemoryMarshal.Cast<double, Vector<double>>(sums);
        int width = Powers / Vector<double>.Count;
        double bend = 1 / (Bend * Bend * top * top);
        for (int g = 0; g < count; g++)
        {
            double start = from + ((to - from) * g / (count - 1));
            double full = reach - start;
            sums.Clear();
            double squares = 0;
            double silent = 0;
            double ringing = 0;
            for (int k = 0; k < y.Length; k++)
            {
                double beyond = start + outside - k;
                double u = -beyond / full;
                double w = weights[k];
                double square = w * y[k] * y[k];
                if (u <= 0)
                {
                    double wider = 1 + (w * rings * Math.Exp(-beyond * decay));
                    silent -= square / 2;
                    ringing -= ((square / wider) + Math.Log(wider)) / 2;
                    continue;
                }

                squares += square;

                double log = Math.Log(u);
                double value = Math.Exp(LeastPower * log);
                double ratio = Math.Exp(PowerStep * log);
                for (int p = 0; p < Powers; p++)
                {
                    power[p] = value;
                    value *= ratio;
                }

                Span<Vector<double>> of = MemoryMarshal.Cast<double, Vector<double>>(power);
                for (int v = 0; v < width; v++)
                {
                    Vector<double> one = of[v];
                    Vector<double> two = one * u;
                    Vector<double> weighted = one * w;
                    s[v] += weighted * one;
                    s[width + v] += weighted * two;
                    s[(2 * width) + v] += two * two * w;
                    s[(3 * width) + v] += weighted * y[k];
                    s[(4 * width) + v] += two * (w * y[k]);
                }
            }

            double best = double.NegativeInfinity;
            for (int p = 0; p < Powers; p++)
            {
                double a = sums[p] + (1e-4 * bend);
                double b = sums[Powers + p];
                double c = sums[(2 * Powers) + p] + bend;
                double d = sums[(3 * Powers) + p];
                double e = sums[(4 * Powers) + p];
                double det = (a * c) - (b * b);
                double explained = ((c * d * d) - (2 * b * d * e) + (a * e * e)) / det;
                turn[p] = PowerLogs[p] + ((explained - squares - Math.Log(det)) / 2);
                best = Math.Max(best, turn[p]);
            }

            double total = 0;
            for (int p = 0; p < Powers; p++)
            {
                total += Math.Exp(turn[p] - best);
            }

            // Beyond the edge there is nothing, or the plate alone.
            double apart = ringing - silent;
            double empty =
                apart > 0
                    ? ringing + Math.Log(Rings + ((1 - Rings) * Math.Exp(-apart)))
                    : silent + Math.Log(1 - Rings + (Rings * Math.Exp(apart)));
            logs[g] = best + Math.Log(total) + empty;
        }
    }
}
