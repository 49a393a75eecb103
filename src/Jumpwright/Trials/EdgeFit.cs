using System.Numerics;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

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

    /// <summary>So much less likely (in logarithms) than another, something adds nothing to it.</summary>
    private const double Lost = 45;

    /// <summary>The root of a smaller part of an edge vanishes with all its powers.</summary>
    private const double LeastPart = 1e-300;

    /// <summary>Logarithms farther below are lost in any sum, and a vector that holds one is reckoned number by number.</summary>
    private const double LeastLog = -700;

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

    /// <summary>Where the farthest instant asked is no less likely than this (in logarithms), the edge may lie beyond it.</summary>
    private const double ReachesBeyond = 3;

    private static readonly double[] AllPowers =
    [
        .. Enumerable.Range(0, Powers).Select(p => LeastPower + (p * PowerStep)),
    ];

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

        cut = from <= window.Earliest && logs[0] > Samples.Greatest(logs) - ReachesBeyond;

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
        Span<double> room = stackalloc double[EdgeWindow.Room(rateHz, ringsS)];
        if (!EdgeWindow.TryTake(edge, forceN, rateHz, ringsS, room, out EdgeWindow window))
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
            // Less is lost in rounding, and dear to reckon.
            sum += log > best - Lost ? Math.Exp(log - best) : 0;
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

    /// <summary>What logarithms not above 0 stand for.</summary>
    private static Vector512<double> Part(Vector512<double> logs) =>
        Vector512.Exp(Vector512.Max(logs, Vector512.Create(LeastLog)));

    /// <summary>How likely the samples of a window are, instant by instant.</summary>
    private readonly ref struct EdgeScan(int way, double rateHz, PlateAnswer? answer)
    {
        private readonly double _decay = 2 / (RingsS * rateHz);

        /// <summary>Logarithm of how likely each instant is, over all powers; instants evenly from one end to the other.</summary>
        public void Of(in EdgeWindow window, double from, double to, Span<double> logs)
        {
            switch (answer)
            {
                case null:
                    Plain(window, from, to, logs);
                    break;
                case { Resonates: true } plate:
                    Resonating(window, plate, from, to, logs);
                    break;
                case { } swing:
                    Topped(window, swing, from, to, logs);
                    break;
            }
        }

        private void Plain(in EdgeWindow window, double from, double to, Span<double> logs)
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

                Plain(window, Vector512.Create<double>(some)).CopyTo(some);
                some[..count].CopyTo(logs[g..]);
            }
        }

        /// <summary>The same of eight instants side by side.</summary>
        private Vector512<double> Plain(in EdgeWindow window, Vector512<double> start)
        {
            // Every power tried, its square and those one higher are whole powers of one root, each one product after the last.
            Span<Vector512<double>> even = stackalloc Vector512<double>[Powers + StepsToOne];
            Span<Vector512<double>> odd = stackalloc Vector512<double>[Powers];
            Span<Vector512<double>> forces = stackalloc Vector512<double>[Powers + StepsToOne];
            even.Clear();
            odd.Clear();
            forces.Clear();
            Vector512<double> nothing = Vector512<double>.Zero;
            Vector512<double> squares = nothing;
            Vector512<double> silent = nothing;
            Vector512<double> ringing = nothing;
            Vector512<double> border = start + Vector512.Create((double)window.Outside);
            Vector512<double> full = Vector512.Create(window.Reach) - start;
            double rings = RingsPart * window.LoadN * RingsPart * window.LoadN;
            for (int k = 0; k < window.ForceN.Length; k++)
            {
                double y = window.ForceN[k];
                Vector512<double> w = Vector512.Create(window.Weights[k]);
                Vector512<double> square = w * (y * y);
                Vector512<double> inside = Vector512.Create((double)k) - border;
                Vector512<double> isInside = Vector512.GreaterThan(inside, nothing);
                if (!Vector512.GreaterThanAll(inside, nothing))
                {
                    Vector512<double> beyond = Vector512.AndNot(square, isInside);
                    Vector512<double> wider =
                        Vector512<double>.One
                        + (Vector512.AndNot(w, isInside) * rings * Part(Vector512.Min(inside, nothing) * _decay));
                    silent += beyond;
                    ringing += (beyond / wider) + Vector512.Log(wider);
                    if (!Vector512.GreaterThanAny(inside, nothing))
                    {
                        continue;
                    }
                }

                w &= isInside;
                squares += square & isInside;
                Vector512<double> part = Vector512.Max(inside / full, Vector512.Create(LeastPart));
                Vector512<double> root = Vector512.Exp(Vector512.Log(part) * PowerStep);
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

            double bend = 1 / (Bend * Bend * window.Top * window.Top);
            Span<Vector512<double>> turn = stackalloc Vector512<double>[Powers];
            Vector512<double> best = Vector512.Create(double.NegativeInfinity);
            for (int p = 0; p < Powers; p++)
            {
                turn[p] =
                    Vector512.Create(PowerLogs[p])
                    + Explained(even[p], odd[p], even[p + StepsToOne], forces[p], forces[p + StepsToOne], bend)
                    - (squares / 2);
                best = Vector512.Max(best, turn[p]);
            }

            Vector512<double> total = nothing;
            for (int p = 0; p < Powers; p++)
            {
                total += Part(turn[p] - best);
            }

            // Beyond the edge there is nothing, or the plate alone.
            Vector512<double> apart = (silent - ringing) / 2;
            Vector512<double> less = Part(-Vector512.Abs(apart));
            Vector512<double> mixed = Vector512.ConditionalSelect(
                Vector512.GreaterThan(apart, nothing),
                Vector512.Create(Rings) + ((1 - Rings) * less),
                Vector512.Create(1 - Rings) + (Rings * less)
            );
            return best + Vector512.Log(total) + Vector512.Log(mixed) - (Vector512.Min(silent, ringing) / 2);
        }

        /// <summary>The same where a swing comes on top of a force that is read right.</summary>
        private void Topped(in EdgeWindow window, PlateAnswer swinging, double from, double to, Span<double> logs)
        {
            ReadOnlySpan<double> y = window.ForceN;
            Span<double> power = stackalloc double[Powers];
            Span<double> sums = stackalloc double[5 * Powers];
            for (int g = 0; g < logs.Length; g++)
            {
                double start = from + ((to - from) * g / (logs.Length - 1));
                double full = window.Reach - start;
                sums.Clear();
                double squares = 0;
                double silent = 0;
                var swing = new SwingSums(swinging, rateHz, window.LoadN);
                for (int k = 0; k < y.Length; k++)
                {
                    double beyond = start + window.Outside - k;
                    double u = -beyond / full;
                    double w = window.Weights[k];
                    double square = w * y[k] * y[k];
                    if (u <= 0)
                    {
                        silent -= square / 2;
                        if (way > 0)
                        {
                            swing.Add(beyond, y[k], w);
                        }

                        continue;
                    }

                    squares += square;
                    PowersOf(u, power);
                    Add(sums, power, u, w, y[k]);
                }

                logs[g] =
                    OverPowers(
                        Vector512.Create<double>(sums),
                        Vector512.Create<double>(sums[Powers..]),
                        Vector512.Create<double>(sums[(2 * Powers)..]),
                        Vector512.Create<double>(sums[(3 * Powers)..]),
                        Vector512.Create<double>(sums[(4 * Powers)..]),
                        squares,
                        window.Top
                    )
                    + silent
                    + swing.Explained();
            }
        }

        private void Resonating(in EdgeWindow window, PlateAnswer plate, double from, double to, Span<double> logs)
        {
            ReadOnlySpan<double> y = window.ForceN;
            ReadOnlySpan<double> weights = window.Weights[..y.Length];
            ref readonly double table = ref SpringAnswer.Table(SpringAnswer.Nearest(plate.Damping), way)[0];
            double radians = 2 * Math.PI * plate.Hz / rateHz;
            double squares = 0;
            for (int k = 0; k < y.Length; k++)
            {
                squares += weights[k] * y[k] * y[k];
            }

            for (int g = 0; g < logs.Length; g++)
            {
                double start = from + ((to - from) * g / (logs.Length - 1));
                Vector512<double> a = Vector512<double>.Zero;
                Vector512<double> b = Vector512<double>.Zero;
                Vector512<double> c = Vector512<double>.Zero;
                Vector512<double> d = Vector512<double>.Zero;
                Vector512<double> e = Vector512<double>.Zero;
                // Before a touch-down there is nothing.
                int first = way < 0 ? Math.Max((int)Math.Floor(start + window.Outside) + 1, 0) : 0;
                for (int k = first; k < y.Length; k++)
                {
                    double at = (k - window.Outside - start) * radians;
                    double row = Math.Clamp(SpringAnswer.EdgeRow + (at * SpringAnswer.Rows), 0, SpringAnswer.LastRow);
                    int r = (int)row;
                    // The last row that is asked for has one more behind it.
                    var column = (nuint)(r * SpringAnswer.Columns);
                    Vector512<double> part = Vector512.Create(row - r);
                    Vector512<double> one = Between(in table, column, part);
                    Vector512<double> two = Between(in table, column + StepsToOne, part);
                    Vector512<double> w = Vector512.Create(weights[k]);
                    Vector512<double> force = Vector512.Create(y[k]);
                    Vector512<double> weighted = one * w;
                    Vector512<double> higher = two * w;
                    a = Vector512.MultiplyAddEstimate(weighted, one, a);
                    b = Vector512.MultiplyAddEstimate(weighted, two, b);
                    c = Vector512.MultiplyAddEstimate(higher, two, c);
                    d = Vector512.MultiplyAddEstimate(weighted, force, d);
                    e = Vector512.MultiplyAddEstimate(higher, force, e);
                }

                // What all samples of an instant share, radians to each power, is let in once.
                double scale = 1 / ((window.Reach - start) * radians);
                Vector512<double> ones = Vector512.Exp(Vector512.Create<double>(AllPowers) * Math.Log(scale));
                Vector512<double> twos = ones * scale;
                logs[g] = OverPowers(
                    a * ones * ones,
                    b * ones * twos,
                    c * twos * twos,
                    d * ones,
                    e * twos,
                    squares,
                    window.Top
                );
            }
        }

        /// <summary>Eight columns of a table from one on, between a row and the next.</summary>
        private static Vector512<double> Between(ref readonly double table, nuint from, Vector512<double> part)
        {
            Vector512<double> low = Vector512.LoadUnsafe(in table, from);
            Vector512<double> high = Vector512.LoadUnsafe(in table, from + SpringAnswer.Columns);
            return Vector512.MultiplyAddEstimate(high - low, part, low);
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

        /// <summary>Half of what the normal equations of a power explain, less the logarithm of their determinant.</summary>
        private static Vector512<double> Explained(
            Vector512<double> a,
            Vector512<double> b,
            Vector512<double> c,
            Vector512<double> d,
            Vector512<double> e,
            double bend
        )
        {
            a += Vector512.Create(1e-4 * bend);
            c += Vector512.Create(bend);
            Vector512<double> det = (a * c) - (b * b);
            return ((((c * d * d) - (2 * b * d * e) + (a * e * e)) / det) - Vector512.Log(det)) / 2;
        }

        private static double OverPowers(
            Vector512<double> a,
            Vector512<double> b,
            Vector512<double> c,
            Vector512<double> d,
            Vector512<double> e,
            double squares,
            double top
        )
        {
            double bend = 1 / (Bend * Bend * top * top);
            Vector512<double> turn =
                Vector512.Create<double>(PowerLogs) + Explained(a, b, c, d, e, bend) - Vector512.Create(squares / 2);
            double best = double.NegativeInfinity;
            for (int p = 0; p < Powers; p++)
            {
                best = Math.Max(best, turn[p]);
            }

            return best + Math.Log(Vector512.Sum(Part(turn - Vector512.Create(best))));
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
