using System.Numerics;
using System.Runtime.InteropServices;

namespace Jumpwright.Trials;

/// <summary>
/// What the block means of one still stretch say of its waves, of the weight and of a slope: sums over the blocks, before any
/// weighting. Times count from the middle of the blocks, so that cosines and sines know nothing of each other.
/// </summary>
internal sealed class StillEquations
{
    private const int N = Sway.Waves;

    private StillEquations(double middleSample, Scratch scratch)
    {
        MiddleSample = middleSample;
        Cosines = scratch.Noughts(N * N);
        Sines = scratch.Noughts(N * N);
        CosineSums = scratch.Noughts(N);
        SineTimes = scratch.Noughts(N);
        CosineForce = scratch.Noughts(N);
        SineForce = scratch.Noughts(N);
    }

    public double MiddleSample { get; }

    /// <summary>Number of blocks.</summary>
    public int Count { get; private init; }

    /// <summary>Products of cosines with each other, and of sines.</summary>
    public ArraySegment<double> Cosines { get; }

    public ArraySegment<double> Sines { get; }

    /// <summary>Products of the cosines with one, and of the sines with time.</summary>
    public ArraySegment<double> CosineSums { get; }

    public ArraySegment<double> SineTimes { get; }

    /// <summary>Products of the means, less a weight, with cosines and sines.</summary>
    public ArraySegment<double> CosineForce { get; }

    public ArraySegment<double> SineForce { get; }

    /// <summary>Sum of the means less that weight, N, and of that times time.</summary>
    public double ForceSum { get; private set; }

    public double ForceTimes { get; private set; }

    /// <summary>Sum of squared times, s².</summary>
    public double TimeSquares { get; private init; }

    public static StillEquations Of(StillBlocks blocks, double dt, double weightN, Scratch scratch)
    {
        double[] means = blocks.MeanN;
        int count = means.Length;
        double step = blocks.BlockSamples * dt;
        var equations = new StillEquations(blocks.MiddleSample, scratch)
        {
            Count = count,
            TimeSquares = step * step * count * (((double)count * count) - 1) / 12,
        };
        equations.AddProducts(step);
        equations.AddForces(means, step, weightN);
        return equations;
    }

    /// <summary>Sums of products of waves over evenly spaced times are sums of the waves of sum and difference (Dirichlet's kernel).</summary>
    private void AddProducts(double step)
    {
        Span<double> sines = stackalloc double[2 * N];
        Span<double> cosines = stackalloc double[2 * N];
        ReadOnlySpan<double> frequencies = Sway.AngularFrequencies;
        Span<double> cosineSums = CosineSums;
        Span<double> sineTimes = SineTimes;
        Span<double> products = Cosines;
        Span<double> sineProducts = Sines;
        for (int j = 0; j < N; j++)
        {
            double half = frequencies[j] * step / 2;
            (sines[j], cosines[j]) = Math.SinCos(half);
            (sines[N + j], cosines[N + j]) = Math.SinCos(half * Count);
            double kernel = sines[N + j] / sines[j];
            cosineSums[j] = kernel;
            // The kernel's derivative by frequency.
            sineTimes[j] = step / 2 * ((kernel * cosines[j]) - (Count * cosines[N + j])) / sines[j];
        }

        for (int i = 0; i < N; i++)
        {
            for (int j = 0; j <= i; j++)
            {
                double ss = sines[i] * cosines[j];
                double cs = cosines[i] * sines[j];
                double many = sines[N + i] * cosines[N + j];
                double few = cosines[N + i] * sines[N + j];
                double plus = (many + few) / (ss + cs);
                double minus = i == j ? Count : (many - few) / (ss - cs);
                products[(i * N) + j] = products[(j * N) + i] = (minus + plus) / 2;
                sineProducts[(i * N) + j] = sineProducts[(j * N) + i] = (minus - plus) / 2;
            }
        }
    }

    private void AddForces(double[] means, double step, double weightN)
    {
        Span<double> cos = stackalloc double[N];
        Span<double> sin = stackalloc double[N];
        Span<double> turnCos = stackalloc double[N];
        Span<double> turnSin = stackalloc double[N];
        ReadOnlySpan<double> frequencies = Sway.AngularFrequencies;
        // From the middle outwards, both sides at once.
        double t = means.Length % 2 == 0 ? step / 2 : 0;
        for (int j = 0; j < N; j++)
        {
            (sin[j], cos[j]) = Math.SinCos(frequencies[j] * t);
            (turnSin[j], turnCos[j]) = Math.SinCos(frequencies[j] * step);
        }

        Span<Vector<double>> c = MemoryMarshal.Cast<double, Vector<double>>(cos);
        Span<Vector<double>> s = MemoryMarshal.Cast<double, Vector<double>>(sin);
        Span<Vector<double>> tc = MemoryMarshal.Cast<double, Vector<double>>(turnCos);
        Span<Vector<double>> ts = MemoryMarshal.Cast<double, Vector<double>>(turnSin);
        Span<Vector<double>> cosines = MemoryMarshal.Cast<double, Vector<double>>(CosineForce.AsSpan());
        Span<Vector<double>> sines = MemoryMarshal.Cast<double, Vector<double>>(SineForce.AsSpan());
        for (int late = means.Length / 2; late < means.Length; late++)
        {
            int early = means.Length - 1 - late;
            double even = early == late ? means[late] - weightN : means[late] + means[early] - (2 * weightN);
            double odd = means[late] - means[early];
            ForceSum += even;
            ForceTimes += t * odd;
            for (int j = 0; j < c.Length; j++)
            {
                cosines[j] += c[j] * even;
                sines[j] += s[j] * odd;
                (c[j], s[j]) = ((c[j] * tc[j]) - (s[j] * ts[j]), (s[j] * tc[j]) + (c[j] * ts[j]));
            }

            t += step;
        }
    }
}
