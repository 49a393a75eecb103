using System.Numerics;
using System.Runtime.InteropServices;

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

    /// <summary>Powers tried: as many as fill whole vectors.</summary>
    private const int Powers = 8;

    private const double LeastPower = 0.6;
    private const double PowerStep = 0.2;

    /// <summary>So many steps of powers make one: a power and the bend beside it.</summary>
    private const int StepsToOne = 5;

    /// <summary>The usual power and its spread (house estimate: straight to a little round).</summary>
    private const double UsualPower = 1.2;

    private const double PowerSpread = 0.35;

    /// <summary>How far the force bends away from its power within the part looked at, part of its top (house estimate).</summary>
    private const double Bend = 0.2;

    /// <summary>Nor farther in than this, s.</summary>
    private const double InwardsS = 0.004;

    /// <summary>A plate's swing moves an edge no farther than this from a first reading, s and samples.</summary>
    private const double NearS = 0.003;

    private const double NearSamples = 2.2;

    /// <summary>On a plate that swings the first sample below its swing may lie so many times farther out.</summary>
    private const double SwingInwards = 1.6;

    /// <summary>
    /// One plate in four rings on right beyond an edge, by about this part of the load at first and for about so long, s (house
    /// estimate, held by validation): what is not nothing there need not be the person's.
    /// </summary>
    private const double Rings = 0.25;

    private const double RingsPart = 0.03;
    private const double RingsS = 0.005;

    private const int Coarse = 24;
    private const int Fine = 20;

    /// <summary>So much less likely (in logarithms), an instant is left out.</summary>
    private const double Negligible = 8;

    private static readonly double[] PowerLogs =
    [
        .. Enumerable
            .Range(0, Powers)
            .Select(k => -Math.Pow((LeastPower + (k * PowerStep) - UsualPower) / PowerSpread, 2) / 2),
    ];

    /// <summary>Fits one edge of a quiet plate.</summary>
    /// <param name="edge">The edge.</param>
    /// <param name="forceN">Force, N.</param>
    /// <param name="rateHz">Sampling rate, Hz.</param>
    /// <returns>The instant; null where there are too few samples.</returns>
    public static Instant? Of(in EdgeSide edge, ReadOnlySpan<double> forceN, double rateHz)
    {
        Span<double> at = stackalloc double[Points];
        Span<double> logs = stackalloc double[Points];
        if (!TryTell(edge, forceN, rateHz, null, 0, at, logs))
        {
            return null;
        }

        double best = Samples.Greatest(logs);
        for (int k = 0; k < Points; k++)
        {
            logs[k] = Math.Exp(logs[k] - best);
        }

        return EdgePosterior.Tell(edge, rateHz, at, logs, at[1] - at[0]);
    }

    /// <summary>Instants of one edge, as the plate is believed to answer, with how likely the samples are from each.</summary>
    /// <param name="edge">The edge.</param>
    /// <param name="forceN">Force, N.</param>
    /// <param name="rateHz">Sampling rate, Hz.</param>
    /// <param name="answer">How the plate answers; null for a quiet one.</param>
    /// <param name="ringsS">How long beyond the edge the plate is looked at, s; 0 for a quiet one.</param>
    /// <param name="at">Instants, samples inwards, evenly apart.</param>
    /// <param name="logs">Logarithms of the likelihoods.</param>
    /// <returns>False where there are too few samples.</returns>
    public static bool TryTell(
        in EdgeSide edge,
        ReadOnlySpan<double> forceN,
        double rateHz,
        PlateAnswer? answer,
        double ringsS,
        Span<double> at,
        Span<double> logs
    )
    {
        int room = EdgeWindow.Room(rateHz, ringsS);
        if (
            !EdgeWindow.TryTake(
                edge,
                forceN,
                rateHz,
                ringsS,
                stackalloc double[room],
                stackalloc double[room],
                out EdgeWindow window
            )
        )
        {
            return false;
        }

        var scan = new EdgeScan(edge.Way, rateHz, answer);
        Span<double> coarse = stackalloc double[Coarse + 1];
        (double from, double to) = Range(edge, window, rateHz);
        scan.Of(window, from, to, coarse);
        double least = Samples.Greatest(coarse) - Negligible;
        int low = 0;
        int high = Coarse;
        while (coarse[low] < least)
        {
            low++;
        }

        while (coarse[high] < least)
        {
            high--;
        }

        double step = (to - from) / Coarse;
        (from, to) = (Math.Max(from, from + ((low - 1) * step)), Math.Min(to, from + ((high + 1) * step)));
        scan.Of(window, from, to, logs);
        for (int k = 0; k < Points; k++)
        {
            at[k] = from + ((to - from) * k / Fine);
        }

        return true;
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
        int room = EdgeWindow.Room(rateHz, ringsS);
        if (
            !EdgeWindow.TryTake(
                edge,
                forceN,
                rateHz,
                ringsS,
                stackalloc double[room],
                stackalloc double[room],
                out EdgeWindow window
            )
        )
        {
            return double.NaN;
        }

        Span<double> coarse = stackalloc double[Coarse + 1];
        (double from, double to) = Range(edge, window, rateHz);
        new EdgeScan(edge.Way, rateHz, answer).Of(window, from, to, coarse);
        return LogSum(coarse) + Math.Log((to - from) / Coarse);
    }

    /// <summary>Logarithm of the sum of what logarithms stand for.</summary>
    public static double LogSum(ReadOnlySpan<double> logs)
    {
        double best = Samples.Greatest(logs);
        double sum = 0;
        foreach (double log in logs)
        {
            sum += Math.Exp(log - best);
        }

        return best + Math.Log(sum);
    }

    /// <summary>From where to where an edge is looked for, samples inwards of its first one.</summary>
    private static (double From, double To) Range(in EdgeSide edge, in EdgeWindow window, double rateHz)
    {
        // What looked loaded may have been the plate's ringing.
        double inwards = Math.Max(InwardsS * rateHz, 2.5) * (window.Swings ? SwingInwards : 1);
        double to = Math.Clamp(window.Reach - EdgeWindow.Fewest + 1, 1, inwards);
        if (double.IsNaN(edge.About))
        {
            return (window.Earliest, to);
        }

        double about = Math.Clamp(edge.About, window.Earliest, to);
        double half = Math.Max(NearS * rateHz, NearSamples);
        return (Math.Max(window.Earliest, about - half), Math.Min(to, about + half));
    }

    /// <summary>A time to each power of an edge and on to those one higher; nothing before 0.</summary>
    public static void PowersOf(double t, Span<double> into)
    {
        if (t <= 0)
        {
            into.Clear();
            return;
        }

        double log = Math.Log(t);
        double value = Math.Exp(LeastPower * log);
        double ratio = Math.Exp(PowerStep * log);
        for (int p = 0; p < into.Length; p++)
        {
            into[p] = value;
            value *= ratio;
        }
    }

    /// <summary>How likely the samples of a window are, instant by instant.</summary>
    private readonly ref struct EdgeScan(int way, double rateHz, PlateAnswer? answer)
    {
        private readonly double _decay = 2 / (RingsS * rateHz);

        /// <summary>Logarithm of how likely each instant is, over all powers; instants evenly from one end to the other.</summary>
        public void Of(in EdgeWindow window, double from, double to, Span<double> logs)
        {
            if (answer is { Resonates: true } plate)
            {
                Resonating(window, plate, from, to, logs);
                return;
            }

            Plain(window, from, to, logs);
        }

        private void Plain(in EdgeWindow window, double from, double to, Span<double> logs)
        {
            ReadOnlySpan<double> y = window.ForceN;
            Span<double> power = stackalloc double[Powers];
            Span<double> sums = stackalloc double[5 * Powers];
            double rings = RingsPart * window.LoadN * RingsPart * window.LoadN;
            for (int g = 0; g < logs.Length; g++)
            {
                double start = from + ((to - from) * g / (logs.Length - 1));
                double full = window.Reach - start;
                sums.Clear();
                double squares = 0;
                double silent = 0;
                double ringing = 0;
                var swing = new SwingSums(answer, rateHz, window.LoadN);
                for (int k = 0; k < y.Length; k++)
                {
                    double beyond = start + window.Outside - k;
                    double u = -beyond / full;
                    double w = window.Weights[k];
                    double square = w * y[k] * y[k];
                    if (u <= 0)
                    {
                        double wider = 1 + (w * rings * Math.Exp(-beyond * _decay));
                        silent -= square / 2;
                        ringing -= ((square / wider) + Math.Log(wider)) / 2;
                        if (answer is not null && way > 0)
                        {
                            swing.Add(beyond, y[k], w);
                        }

                        continue;
                    }

                    squares += square;
                    PowersOf(u, power);
                    Add(sums, power, u, w, y[k]);
                }

                // Beyond the edge there is nothing, or the plate alone.
                double apart = ringing - silent;
                double empty =
                    answer is not null ? silent + swing.Explained()
                    : apart > 0 ? ringing + Math.Log(Rings + ((1 - Rings) * Math.Exp(-apart)))
                    : silent + Math.Log(1 - Rings + (Rings * Math.Exp(apart)));
                logs[g] = OverPowers(sums, squares, window.Top) + empty;
            }
        }

        private void Resonating(in EdgeWindow window, PlateAnswer plate, double from, double to, Span<double> logs)
        {
            ReadOnlySpan<double> y = window.ForceN;
            ReadOnlySpan<double> table = SpringAnswer.Table(SpringAnswer.Nearest(plate.Damping), way);
            double radians = 2 * Math.PI * plate.Hz / rateHz;
            int width = Powers / Vector<double>.Count;
            Span<double> sums = stackalloc double[5 * Powers];
            Span<Vector<double>> s = MemoryMarshal.Cast<double, Vector<double>>(sums);
            Span<double> scales = stackalloc double[SpringAnswer.Columns];
            for (int g = 0; g < logs.Length; g++)
            {
                double start = from + ((to - from) * g / (logs.Length - 1));
                PowersOf(1 / ((window.Reach - start) * radians), scales);
                sums.Clear();
                double squares = 0;
                for (int k = 0; k < y.Length; k++)
                {
                    double w = window.Weights[k];
                    squares += w * y[k] * y[k];
                    double at = (k - window.Outside - start) * radians;
                    if (way < 0 && at <= 0)
                    {
                        continue;
                    }

                    double row = Math.Clamp(SpringAnswer.EdgeRow + (at * SpringAnswer.Rows), 0, SpringAnswer.LastRow);
                    int r = (int)row;
                    double part = row - r;
                    ReadOnlySpan<double> low = table.Slice(r * SpringAnswer.Columns, 2 * SpringAnswer.Columns);
                    for (int v = 0; v < width; v++)
                    {
                        int c = v * Vector<double>.Count;
                        var a = new Vector<double>(low[c..]);
                        var b = new Vector<double>(low[(c + StepsToOne)..]);
                        Vector<double> one =
                            (a + ((new Vector<double>(low[(c + SpringAnswer.Columns)..]) - a) * part))
                            * new Vector<double>(scales[c..]);
                        Vector<double> two =
                            (b + ((new Vector<double>(low[(c + StepsToOne + SpringAnswer.Columns)..]) - b) * part))
                            * new Vector<double>(scales[(c + StepsToOne)..]);
                        Vector<double> weighted = one * w;
                        s[v] += weighted * one;
                        s[width + v] += weighted * two;
                        s[(2 * width) + v] += two * two * w;
                        s[(3 * width) + v] += weighted * y[k];
                        s[(4 * width) + v] += two * (w * y[k]);
                    }
                }

                logs[g] = OverPowers(sums, squares, window.Top);
            }
        }

        /// <summary>Adds a sample to the normal equations of every power: the power itself and, times u, its bend.</summary>
        private static void Add(Span<double> sums, Span<double> power, double u, double w, double y)
        {
            Span<Vector<double>> s = MemoryMarshal.Cast<double, Vector<double>>(sums);
            Span<Vector<double>> ones = MemoryMarshal.Cast<double, Vector<double>>(power);
            int width = Powers / Vector<double>.Count;
            for (int v = 0; v < width; v++)
            {
                Vector<double> first = ones[v];
                Vector<double> second = first * u;
                Vector<double> weighted = first * w;
                s[v] += weighted * first;
                s[width + v] += weighted * second;
                s[(2 * width) + v] += second * second * w;
                s[(3 * width) + v] += weighted * y;
                s[(4 * width) + v] += second * (w * y);
            }
        }

        private static double OverPowers(ReadOnlySpan<double> sums, double squares, double top)
        {
            Span<double> turn = stackalloc double[Powers];
            double bend = 1 / (Bend * Bend * top * top);
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

            return best + Math.Log(total);
        }
    }

    /// <summary>What a swing of any size and phase beyond the edge explains.</summary>
    private struct SwingSums(PlateAnswer? answer, double rateHz, double loadN)
    {
        /// <summary>A swing is about as large as this part of the load (house estimate).</summary>
        private const double UsualPart = 0.04;

        private readonly double _turn = answer is { } swing
            ? 2 * Math.PI * swing.Hz * Math.Sqrt(1 - (swing.Damping * swing.Damping)) / rateHz
            : 0;

        private readonly double _decay = answer is { } fading ? 2 * Math.PI * fading.Hz * fading.Damping / rateHz : 0;

        private readonly double _usual = UsualPart * loadN * UsualPart * loadN;

        private double _cc;
        private double _cs;
        private double _ss;
        private double _cy;
        private double _sy;

        public void Add(double beyond, double y, double w)
        {
            double size = Math.Exp(-_decay * beyond);
            (double sin, double cos) = Math.SinCos(_turn * beyond);
            (sin, cos) = (size * sin, size * cos);
            _cc += w * cos * cos;
            _cs += w * cos * sin;
            _ss += w * sin * sin;
            _cy += w * cos * y;
            _sy += w * sin * y;
        }

        /// <summary>Logarithm of how much likelier the samples are with a swing than with nothing.</summary>
        public readonly double Explained()
        {
            double a = _cc + (1 / _usual);
            double c = _ss + (1 / _usual);
            double det = (a * c) - (_cs * _cs);
            double explained = ((c * _cy * _cy) - (2 * _cs * _cy * _sy) + (a * _sy * _sy)) / det;
            return (explained - Math.Log(det * _usual * _usual)) / 2;
        }
    }
}
