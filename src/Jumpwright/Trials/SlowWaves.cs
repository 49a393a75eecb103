using System.Numerics;
using System.Runtime.InteropServices;

namespace Jumpwright.Trials;

/// <summary>The sum of slow waves over many samples: drawn at knots and taken as straight between them.</summary>
internal static class SlowWaves
{
    private const int N = Sway.Waves;

    /// <summary>The fastest wave is off a straight line by three thousandths over this long, s.</summary>
    private const double KnotS = 0.008;

    /// <summary>Takes waves and a constant from a force.</summary>
    /// <param name="forceN">Force, N.</param>
    /// <param name="firstS">Time of its first sample, s.</param>
    /// <param name="stepS">Seconds a sample.</param>
    /// <param name="amplitudes">Amplitudes of the cosines, then of the sines, N.</param>
    /// <param name="constantN">The constant, N.</param>
    public static void Subtract(
        Span<double> forceN,
        double firstS,
        double stepS,
        ReadOnlySpan<double> amplitudes,
        double constantN
    )
    {
        if (!amplitudes.ContainsAnyExcept(0))
        {
            SubtractLine(forceN, constantN, 0);
            return;
        }

        int knot = Math.Max((int)(KnotS / stepS), 1);
        Span<double> cos = stackalloc double[N];
        Span<double> sin = stackalloc double[N];
        Span<double> turnCos = stackalloc double[N];
        Span<double> turnSin = stackalloc double[N];
        double now = constantN;
        for (int j = 0; j < N; j++)
        {
            double omega = Sway.AngularFrequencies[j];
            (double sine, double cosine) = Math.SinCos(omega * firstS);
            // Each pair turns as one: the cosine's amplitude and the sine's in what is left to add up.
            cos[j] = (amplitudes[j] * cosine) + (amplitudes[N + j] * sine);
            sin[j] = (amplitudes[N + j] * cosine) - (amplitudes[j] * sine);
            (turnSin[j], turnCos[j]) = Math.SinCos(omega * knot * stepS);
            now += cos[j];
        }

        Span<Vector<double>> c = MemoryMarshal.Cast<double, Vector<double>>(cos);
        Span<Vector<double>> s = MemoryMarshal.Cast<double, Vector<double>>(sin);
        Span<Vector<double>> tc = MemoryMarshal.Cast<double, Vector<double>>(turnCos);
        Span<Vector<double>> ts = MemoryMarshal.Cast<double, Vector<double>>(turnSin);
        for (int from = 0; from < forceN.Length; from += knot)
        {
            Vector<double> turned = Vector<double>.Zero;
            for (int j = 0; j < c.Length; j++)
            {
                (c[j], s[j]) = ((c[j] * tc[j]) + (s[j] * ts[j]), (s[j] * tc[j]) - (c[j] * ts[j]));
                turned += c[j];
            }

            double next = constantN + Vector.Sum(turned);
            double slope = (next - now) / knot;
            SubtractLine(forceN[from..Math.Min(from + knot, forceN.Length)], now, slope);
            now = next;
        }
    }

    /// <summary>Takes a line from a force.</summary>
    /// <param name="forceN">Force, N.</param>
    /// <param name="firstN">The line at the first sample, N.</param>
    /// <param name="slopeN">Its change from sample to sample, N.</param>
    public static void SubtractLine(Span<double> forceN, double firstN, double slopeN)
    {
        Span<Vector<double>> whole = MemoryMarshal.Cast<double, Vector<double>>(forceN);
        Vector<double> line = Vector.CreateSequence(firstN, slopeN);
        var step = new Vector<double>(slopeN * Vector<double>.Count);
        for (int i = 0; i < whole.Length; i++)
        {
            whole[i] -= line;
            line += step;
        }

        for (int i = whole.Length * Vector<double>.Count; i < forceN.Length; i++)
        {
            forceN[i] -= firstN + (slopeN * i);
        }
    }
}
