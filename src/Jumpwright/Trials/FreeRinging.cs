using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Jumpwright.Trials;

/// <summary>
/// What a plate does when nobody is on it any more: where it swings on after take-offs, frequency and damping follow from that
/// by least squares, over all take-offs together. Samples too few for a swing fold it: then several answers look alike, and all are
/// told.
/// </summary>
internal static class FreeRinging
{
    private const double LeastHz = 20;
    private const double MostHz = 550;
    private const int Frequencies = 60;

    private const double LeastDamping = 0.015;
    private const double MostDamping = 0.5;
    private const int Dampings = 9;

    /// <summary>A swing's first size is about this part of the load (house estimate).</summary>
    private const double UsualPart = 0.04;

    /// <summary>So much likelier (in logarithms) than noise alone, it is a swing; so much less likely than the best, it is not this one.</summary>
    private const double Shows = 8;

    private const double Negligible = 10;
    private const int Most = 6;

    private const double Overdamped = 0.9;

    private static readonly (double I, double J)[] Steps = [(1, 0), (-1, 0), (0, 1), (0, -1)];

    /// <summary>The swings that explain what is seen where a plate is not at rest after take-offs, likeliest first.</summary>
    public static List<(double Hz, double Damping)> Of(
        ReadOnlySpan<double> forceN,
        double rateHz,
        double noiseN,
        double loadN,
        List<Aftermath> flights
    )
    {
        double white = Aftermath.White(noiseN);
        double usual = UsualPart * loadN;
        List<(double Gain, double I, double J)> found = Peaks(forceN, rateHz, flights, white, usual);
        for (int k = 0; k < found.Count; k++)
        {
            found[k] = Climb(forceN, rateHz, flights, white, usual, found[k]);
        }

        found.Sort((a, b) => b.Gain.CompareTo(a.Gain));
        var swings = new List<(double Hz, double Damping)>();
        foreach ((double gain, double i, double j) in found)
        {
            if (gain < Shows || gain < found[0].Gain - Negligible || swings.Count == Most)
            {
                break;
            }

            (double hz, double damping) = (Hz(i), Damping(j));
            if (!swings.Exists(s => Math.Abs((s.Hz / hz) - 1) < 0.02 && Math.Abs((s.Damping / damping) - 1) < 0.1))
            {
                swings.Add((hz, damping));
            }
        }

        return swings;
    }

    private static double Hz(double i) => LeastHz * Math.Pow(MostHz / LeastHz, i / (Frequencies - 1));

    private static double Damping(double j) =>
        Math.Min(LeastDamping * Math.Pow(MostDamping / LeastDamping, j / (Dampings - 1)), Overdamped);

    /// <summary>Where on a grid of frequencies and dampings a swing is likeliest among its neighbours.</summary>
    private static List<(double Gain, double I, double J)> Peaks(
        ReadOnlySpan<double> forceN,
        double rateHz,
        List<Aftermath> flights,
        double white,
        double usual
    )
    {
        var grid = new double[Frequencies, Dampings];
        Span<double> cells = MemoryMarshal.CreateSpan(ref grid[0, 0], grid.Length);
        int width = Vector512<double>.Count;
        Span<double> hz = stackalloc double[width];
        Span<double> dampings = stackalloc double[width];
        Span<double> gains = stackalloc double[width];
        for (int cell = 0; cell < cells.Length; cell += width)
        {
            for (int k = 0; k < width; k++)
            {
                (int i, int j) = Math.DivRem(Math.Min(cell + k, cells.Length - 1), Dampings);
                (hz[k], dampings[k]) = (Hz(i), Damping(j));
            }

            Likelihoods(forceN, rateHz, flights, white, usual, hz, dampings, gains);
            gains[..Math.Min(width, cells.Length - cell)].CopyTo(cells[cell..]);
        }

        var found = new List<(double Gain, double I, double J)>();
        for (int i = 0; i < Frequencies; i++)
        {
            for (int j = 0; j < Dampings; j++)
            {
                if (grid[i, j] > Shows / 2 && IsPeak(grid, i, j))
                {
                    found.Add((grid[i, j], i, j));
                }
            }
        }

        found.Sort((a, b) => b.Gain.CompareTo(a.Gain));
        return found.Count > 2 * Most ? found[..(2 * Most)] : found;
    }

    private static bool IsPeak(double[,] grid, int i, int j)
    {
        for (int a = Math.Max(i - 1, 0); a <= Math.Min(i + 1, Frequencies - 1); a++)
        {
            for (int b = Math.Max(j - 1, 0); b <= Math.Min(j + 1, Dampings - 1); b++)
            {
                if (grid[a, b] > grid[i, j])
                {
                    return false;
                }
            }
        }

        return true;
    }

    /// <summary>From a peak of the grid to the top, by ever smaller steps.</summary>
    private static (double Gain, double I, double J) Climb(
        ReadOnlySpan<double> forceN,
        double rateHz,
        List<Aftermath> flights,
        double white,
        double usual,
        (double Gain, double I, double J) from
    )
    {
        Span<double> hz = stackalloc double[Vector512<double>.Count];
        Span<double> dampings = stackalloc double[Vector512<double>.Count];
        Span<double> gains = stackalloc double[Vector512<double>.Count];
        for (double step = 0.5; step > 0.004; )
        {
            // All sides of a step, and of half a step, in one look.
            for (int k = 0; k < hz.Length; k++)
            {
                (double i, double j) = Side(from, step, k);
                (hz[k], dampings[k]) = (Hz(i), Damping(j));
            }

            Likelihoods(forceN, rateHz, flights, white, usual, hz, dampings, gains);
            (double Gain, double I, double J) better = from;
            for (int k = 0; k < hz.Length; k++)
            {
                if (gains[k] > better.Gain)
                {
                    (double i, double j) = Side(from, step, k);
                    better = (gains[k], i, j);
                }
            }

            step = better.Gain > from.Gain ? step : step / 4;
            from = better;
        }

        return from;
    }

    /// <summary>Four sides a step away, then four half a step away.</summary>
    private static (double I, double J) Side((double Gain, double I, double J) from, double step, int side)
    {
        (double i, double j) = Steps[side % Steps.Length];
        double far = side < Steps.Length ? step : step / 2;
        return (from.I + (i * far), from.J + (j * far));
    }

    /// <summary>Logarithm of how much likelier the flights are with a swing, each of its own size, than with noise alone; of eight swings.</summary>
    private static void Likelihoods(
        ReadOnlySpan<double> forceN,
        double rateHz,
        List<Aftermath> flights,
        double white,
        double usualN,
        ReadOnlySpan<double> hz,
        ReadOnlySpan<double> dampings,
        Span<double> gains
    )
    {
        var swing = FreeSwing.Of(Vector512.Create(hz), Vector512.Create(dampings), rateHz);
        double ridge = white / (usualN * usualN);
        Vector512<double> gain = Vector512<double>.Zero;
        foreach ((int from, int to, Instant takeOff, double zero) in flights)
        {
            (Vector512<double> c, Vector512<double> s) = swing.After(Vector512.Create(from - takeOff.Sample));
            Vector512<double> cc = Vector512.Create(ridge);
            Vector512<double> cs = Vector512<double>.Zero;
            Vector512<double> ss = cc;
            Vector512<double> cy = cs;
            Vector512<double> sy = cs;
            for (int i = from; i < to; i++)
            {
                double y = forceN[i] - zero;
                cc += c * c;
                cs += c * s;
                ss += s * s;
                cy += c * y;
                sy += s * y;
                swing.On(ref c, ref s);
            }

            Vector512<double> explained = FreeSwing.Explained(cc, cs, ss, cy, sy, out Vector512<double> det);
            gain += ((explained / white) - Vector512.Log(det / (ridge * ridge))) / 2;
        }

        gain.CopyTo(gains);
    }
}
