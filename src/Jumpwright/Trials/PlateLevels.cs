using System.Buffers;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Jumpwright.Trials;

/// <summary>
/// What a plate reads empty and what it reads loaded, roughly, before anything else is known: the lowest flat stretch is the
/// empty plate, the usual reading well above it is the load.
/// </summary>
/// <param name="ZeroN">Reading of the empty plate, N.</param>
/// <param name="LoadN">Usual reading above it, N.</param>
/// <param name="NoiseN">Standard deviation of one sample's noise, N, from differences of neighbours.</param>
/// <param name="WasEmpty">False where the plate was never empty; then the zero is taken to be 0.</param>
/// <param name="CutN">Below this an export wrote nothing, N above zero; 0 where nothing was cut off.</param>
internal readonly record struct PlateLevels(double ZeroN, double LoadN, double NoiseN, bool WasEmpty, double CutN = 0)
{
    private const double BlockS = 0.02;

    /// <summary>As many second differences tell the noise to some per cent.</summary>
    private const int NoiseSamples = 1024;
    private const int BlocksInFlat = 3;
    private const double StandingS = 0.5;

    /// <summary>In hops the usual load is several weights; a foot resting on the plate is far less than one.</summary>
    private const double LeastStandingPart = 0.25;

    private const double FlatPart = 0.1;

    /// <summary>
    /// Nobody stands heavier than he is, but lighter with a foot beside the plate: a stand so long, s, so quiet and so much heavier is
    /// the load. A slow push under a bar may be even to one part in a hundred for as long.
    /// </summary>
    private const double QuietS = QuietStanding.ShortestS;

    private const double QuietPart = 0.006;
    private const double HeavierPart = 1.1;

    /// <summary>Below this part of the weight a level that lasts so long, s, is an empty plate's.</summary>
    private const double LowPart = 0.1;

    private const double LowS = 0.1;

    /// <summary>A plate that was not zeroed: the same, higher and longer.</summary>
    private const double HighPart = 0.5;

    private const double HighS = 0.25;

    public static PlateLevels Of(ReadOnlySpan<double> forceN, double rateHz)
    {
        int block = Math.Max((int)Math.Round(BlockS * rateHz), 4);
        int count = forceN.Length / block;
        double noise = Noise(forceN);
        if (count < BlocksInFlat + 2)
        {
            return new PlateLevels(0, 0, noise, false);
        }

        double[] rented = ArrayPool<double>.Shared.Rent(2 * count);
        Span<double> means = rented.AsSpan(0, count);
        Span<double> usual = rented.AsSpan(count, count);
        for (int k = 0; k < count; k++)
        {
            means[k] = ForceSums.Total(forceN.Slice(k * block, block)) / block;
        }

        double low = Samples.Least(means);
        double high = ThirdGreatest(means);

        // Flat within the noise of block means and a little more for hum and a ringing plate.
        double tolerance = (6 * noise / Math.Sqrt(block)) + Math.Max(2.5, 0.003 * (high - low));
        double zero = LowestFlat(means, tolerance);
        int run = 0;
        bool empty = false;
        double load = high;
        if (double.IsFinite(zero))
        {
            int loaded = 0;
            foreach (double mean in means)
            {
                if (mean > zero + (0.15 * (high - zero)))
                {
                    usual[loaded++] = mean;
                }
            }

            load = (loaded > 0 ? Samples.Nth(usual[..loaded], (loaded - 1) / 2) : high) - zero;
            double? standing = Standing(means, zero, load);
            load = standing ?? load;
            int longest = 0;
            for (int k = 0; k < count; k++)
            {
                run = Math.Abs(means[k] - zero) <= 2 * tolerance ? run + 1 : 0;
                longest = Math.Max(longest, run);
            }

            // A trough of unweighting is neither so low nor flat for so long as an empty plate; and a level far above nothing is
            // an empty plate's only where somebody is seen to stand above it.
            double level = zero / Math.Max(load + zero, 1);
            double seconds = longest * block / rateHz;
            empty =
                load > 80
                && (
                    (level < LowPart && seconds >= LowS)
                    || (level < HighPart && seconds >= HighS && standing is not null)
                );
        }

        ArrayPool<double>.Shared.Return(rented);
        return empty ? new PlateLevels(zero, load, noise, true) : new PlateLevels(0, Median(forceN), noise, false);
    }

    /// <summary>Mean of the lowest three blocks in a row that lie within a tolerance of each other, N; infinite where none do.</summary>
    private static double LowestFlat(ReadOnlySpan<double> means, double tolerance)
    {
        ref double first = ref MemoryMarshal.GetReference(means);
        Vector512<double> lowest = Vector512.Create(double.PositiveInfinity);
        int last = means.Length - BlocksInFlat;
        int k = 0;
        for (; k + Vector512<double>.Count - 1 <= last; k += Vector512<double>.Count)
        {
            lowest = LowerFlat(
                lowest,
                Eight(ref first, k),
                Eight(ref first, k + 1),
                Eight(ref first, k + 2),
                tolerance
            );
        }

        double found = double.PositiveInfinity;
        for (; k <= last; k++)
        {
            Vector512<double> one = LowerFlat(
                Vector512.Create(found),
                Vector512.Create(means[k]),
                Vector512.Create(means[k + 1]),
                Vector512.Create(means[k + 2]),
                tolerance
            );
            found = one[0];
        }

        for (int lane = 0; lane < Vector512<double>.Count; lane++)
        {
            found = Math.Min(found, lowest[lane]);
        }

        return found;
    }

    private static Vector512<double> Eight(ref double first, int from) => Vector512.LoadUnsafe(ref first, (nuint)from);

    private static Vector512<double> LowerFlat(
        Vector512<double> lowest,
        Vector512<double> a,
        Vector512<double> b,
        Vector512<double> c,
        double tolerance
    )
    {
        Vector512<double> spread = Vector512.Max(a, Vector512.Max(b, c)) - Vector512.Min(a, Vector512.Min(b, c));
        Vector512<double> flat = Vector512.LessThanOrEqual(spread, Vector512.Create(tolerance));
        return Vector512.ConditionalSelect(flat, Vector512.Min(lowest, (a + b + c) / 3), lowest);
    }

    /// <summary>Two blocks may be the peak of an impact.</summary>
    private static double ThirdGreatest(ReadOnlySpan<double> values)
    {
        double first = double.NegativeInfinity;
        double second = first;
        double third = first;
        foreach (double v in values)
        {
            if (v > third)
            {
                third = Math.Min(v, second);
                second = v > second ? Math.Min(v, first) : second;
                first = v > first ? v : first;
            }
        }

        return third;
    }

    /// <summary>
    /// The level of the flattest half second that carries somebody, or of a longer and much heavier stand if quiet, N above zero; null
    /// where none is flat.
    /// </summary>
    private static double? Standing(ReadOnlySpan<double> means, double zero, double usual)
    {
        double flattest = double.PositiveInfinity;
        double? level = null;
        foreach ((double mean, double variance) in new RunningMeans(means, zero, (int)(StandingS / BlockS)))
        {
            if (mean > LeastStandingPart * usual && variance < flattest)
            {
                (flattest, level) = (variance, mean);
            }
        }

        if (level is not { } found || Math.Sqrt(Math.Max(flattest, 0)) >= FlatPart * found)
        {
            return null;
        }

        double heaviest = HeavierPart * found;
        foreach ((double mean, double variance) in new RunningMeans(means, zero, (int)(QuietS / BlockS)))
        {
            if (mean > heaviest && variance < QuietPart * QuietPart * mean * mean)
            {
                heaviest = found = mean;
            }
        }

        return found;
    }

    /// <summary>
    /// White noise of one sample, N, from the middle size of second differences, which motion hardly touches: for normal noise
    /// it is 0.6745 · √6 of the standard deviation.
    /// </summary>
    private static double Noise(ReadOnlySpan<double> forceN)
    {
        if (forceN.Length < 8)
        {
            return 0;
        }

        int stride = Math.Max(1, forceN.Length / NoiseSamples);
        double[] rented = ArrayPool<double>.Shared.Rent(NoiseSamples + 8);
        int n = 0;
        for (int i = 1; i + 1 < forceN.Length && n < NoiseSamples + 8; i += stride)
        {
            rented[n++] = Math.Abs(forceN[i - 1] - (2 * forceN[i]) + forceN[i + 1]);
        }

        double noise = Samples.Nth(rented.AsSpan(0, n), n / 2) / (0.6745 * Math.Sqrt(6));
        ArrayPool<double>.Shared.Return(rented);
        return noise;
    }

    /// <summary>
    /// White noise under load, N: some plates read exactly nothing below a limit, so that empty they look silent. The quieter
    /// quarter of second differences within contacts tells it, for the rest is movement (0.3186 · √6 of the deviation).
    /// </summary>
    public static double LoadedNoise(ReadOnlySpan<double> forceN, IReadOnlyList<Contact> contacts)
    {
        int loaded = 0;
        foreach (Contact contact in contacts)
        {
            loaded += contact.Samples.Length;
        }

        int stride = Math.Max(1, loaded / NoiseSamples);
        double[] rented = ArrayPool<double>.Shared.Rent(NoiseSamples + (2 * contacts.Count) + 8);
        int n = 0;
        foreach (Contact contact in contacts)
        {
            for (int i = contact.Samples.From + 1; i + 1 < contact.Samples.To && n < rented.Length; i += stride)
            {
                rented[n++] = Math.Abs(forceN[i - 1] - (2 * forceN[i]) + forceN[i + 1]);
            }
        }

        double noise = n < 8 ? 0 : Samples.Nth(rented.AsSpan(0, n), n / 4) / (0.3186 * Math.Sqrt(6));
        ArrayPool<double>.Shared.Return(rented);
        return noise;
    }

    private static double Median(ReadOnlySpan<double> forceN)
    {
        int stride = Math.Max(1, forceN.Length / 1024);
        double[] some = new double[(forceN.Length + stride - 1) / stride];
        for (int i = 0; i < some.Length; i++)
        {
            some[i] = forceN[i * stride];
        }

        return Samples.Nth(some, some.Length / 2);
    }
}
