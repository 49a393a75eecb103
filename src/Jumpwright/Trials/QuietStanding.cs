using System.Buffers;

namespace Jumpwright.Trials;

/// <summary>A stretch in which the athlete stood still: the centre of mass neither moves nor accelerates, but for sway.</summary>
/// <param name="Samples">The stretch.</param>
/// <param name="MeanN">Mean force with the zero corrected, N.</param>
/// <param name="SwayN">Standard deviation of the slow part of the force, N.</param>
/// <param name="SampleDeviationN">Standard deviation of single samples, N: the measure of Owen et al. 2014.</param>
internal readonly record struct QuietStanding(Stretch Samples, double MeanN, double SwayN, double SampleDeviationN)
{
    /// <summary>Where its sway shows, after a landing, whose end may hide in it; null for a stretch that follows none.</summary>
    public Stretch? Swaying { get; init; }

    private const double BlockS = 0.05;

    /// <summary>
    /// A stretch shorter than this weighs nobody. Owen et al. 2014 (doi:10.1519/JSC.0000000000000311) take one second; the house
    /// lets a little less pass with a larger doubt.
    /// </summary>
    public const double ShortestS = 0.8;

    /// <summary>Below this a stretch is weighed, but with a warning.</summary>
    public const double ProperS = 1.0;

    /// <summary>Slow force deviation, N and part of the weight, above which nobody is standing still (house rule).</summary>
    private const double StillestN = 8;

    private const double StillestPart = 0.012;
    private const double WindowS = 0.5;

    /// <summary>Still stretches so little apart are one, s: the same sway went on between them.</summary>
    private const double BridgeS = 0.35;

    /// <summary>Every still stretch of the contact, in order of time.</summary>
    /// <param name="forceN">Total force with the zero corrected, N.</param>
    /// <param name="rateHz">Sampling rate, Hz.</param>
    /// <param name="within">Where to look.</param>
    /// <param name="loadN">Rough weight, N.</param>
    /// <param name="noiseN">White noise of a sample, N.</param>
    /// <param name="into">Receives the stretches.</param>
    public static void Find(
        ReadOnlySpan<double> forceN,
        double rateHz,
        Stretch within,
        double loadN,
        double noiseN,
        List<QuietStanding> into
    )
    {
        int block = Math.Max((int)Math.Round(BlockS * rateHz), 4);
        int blocks = within.Length / block;
        int window = (int)Math.Round(WindowS * rateHz / block);
        int least = (int)Math.Ceiling(ShortestS * rateHz / block);
        if (blocks < least)
        {
            return;
        }

        double[] rented = ArrayPool<double>.Shared.Rent(2 * blocks);
        Span<double> means = rented.AsSpan(0, blocks);
        Span<double> deviations = rented.AsSpan(blocks, blocks - window + 1);
        for (int k = 0; k < blocks; k++)
        {
            means[k] = ForceSums.Total(forceN.Slice(within.From + (k * block), block)) / block;
        }

        double white = noiseN * noiseN / block;
        double stillest = double.PositiveInfinity;
        double limit = Math.Max(StillestN, StillestPart * loadN);
        int best = -1;
        for (int k = 0; k < deviations.Length; k++)
        {
            (double mean, double deviation) = Spread(means.Slice(k, window), white);
            deviations[k] = deviation;
            if (deviation < stillest && Math.Abs(mean - loadN) < 0.5 * loadN)
            {
                (stillest, best) = (deviation, k);
            }
        }

        if (best >= 0 && stillest <= limit)
        {
            double weight = Spread(means.Slice(best, window), white).Mean;
            double allowed = Math.Min(Math.Max(3 * stillest, 4), limit);
            double off = Math.Max(3 * allowed, 0.01 * loadN);
            Collect(forceN, rateHz, within, block, window, means, deviations, white, weight, allowed, off, into);
            if (into.Count == 0 && allowed < limit)
            {
                Collect(forceN, rateHz, within, block, window, means, deviations, white, weight, limit, off, into);
            }
        }

        ArrayPool<double>.Shared.Return(rented);
    }

    private static void Collect(
        ReadOnlySpan<double> forceN,
        double rateHz,
        Stretch within,
        int block,
        int window,
        ReadOnlySpan<double> means,
        ReadOnlySpan<double> deviations,
        double white,
        double weight,
        double allowed,
        double off,
        List<QuietStanding> into
    )
    {
        int from = -1;
        int to = -1;
        int bridge = (int)Math.Round(BridgeS * rateHz / block);
        for (int k = 0; k <= deviations.Length; k++)
        {
            bool still =
                k < deviations.Length
                && deviations[k] <= allowed
                && Math.Abs(Spread(means.Slice(k, window), white).Mean - weight) <= off;
            if (still)
            {
                from = from < 0 ? k : from;
                to = k + window;
            }
            else if (from >= 0 && k >= to + bridge)
            {
                Add(forceN, rateHz, within, block, means[from..to], white, from, into);
                from = -1;
            }
        }

        if (from >= 0)
        {
            Add(forceN, rateHz, within, block, means[from..to], white, from, into);
        }
    }

    private static void Add(
        ReadOnlySpan<double> forceN,
        double rateHz,
        Stretch within,
        int block,
        ReadOnlySpan<double> means,
        double white,
        int from,
        List<QuietStanding> into
    )
    {
        if (means.Length * block < (int)(ShortestS * rateHz))
        {
            return;
        }

        (double mean, double sway) = Spread(means, white);
        int start = within.From + (from * block);
        var stretch = new Stretch(start, start + (means.Length * block));
        double squares = ForceSums.Squares(forceN[stretch.From..stretch.To], mean);
        into.Add(new QuietStanding(stretch, mean, sway, Math.Sqrt(squares / stretch.Length)));
    }

    private static (double Mean, double Deviation) Spread(ReadOnlySpan<double> values, double white)
    {
        double sum = 0;
        foreach (double v in values)
        {
            sum += v;
        }

        double mean = sum / values.Length;
        double squares = 0;
        foreach (double v in values)
        {
            squares += (v - mean) * (v - mean);
        }

        return (mean, Math.Sqrt(Math.Max((squares / (values.Length - 1)) - white, 0)));
    }
}
