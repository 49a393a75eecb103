namespace Jumpwright.Trials;

/// <summary>The force of a still stretch as means of short blocks of one length.</summary>
/// <param name="MeanN">Mean of each block, N.</param>
/// <param name="BlockSamples">Samples in a block.</param>
/// <param name="MiddleSample">Middle of all blocks together, sample.</param>
internal readonly record struct StillBlocks(double[] MeanN, int BlockSamples, double MiddleSample)
{
    /// <summary>Long against noise, short against the fastest sway, s.</summary>
    public const double BlockS = 0.05;

    /// <summary>A block's mean is never surer than this, N (resolution of plates and files).</summary>
    private const double LeastN = 0.3;

    public static StillBlocks Of(ReadOnlySpan<double> forceN, int offset, Stretch window, double rateHz)
    {
        int block = Math.Max((int)Math.Round(BlockS * rateHz), 1);
        int count = Math.Max(window.Length / block, 1);
        block = Math.Min(block, window.Length);
        var means = new double[count];
        for (int k = 0; k < count; k++)
        {
            means[k] = ForceSums.Total(forceN.Slice(window.From + (k * block) - offset, block)) / block;
        }

        return new StillBlocks(means, block, window.From + (((count * block) - 1) / 2.0));
    }

    /// <summary>
    /// Variance of a block's mean beside sway, N², over several stretches: from fourth differences, which sway slower than 3 Hz
    /// hardly touches and which noise, hum and steps all do.
    /// </summary>
    public static double Variance(ReadOnlySpan<StillBlocks> stretches, double whiteN2)
    {
        double sum = 0;
        int count = 0;
        foreach (StillBlocks blocks in stretches)
        {
            double[] m = blocks.MeanN;
            for (int k = 0; k + 4 < m.Length; k++)
            {
                double d = m[k] - (4 * m[k + 1]) + (6 * m[k + 2]) - (4 * m[k + 3]) + m[k + 4];
                sum += d * d / 70;
                count++;
            }
        }

        // Few blocks tell little: what white noise alone would make weighs as much as ten of them.
        double variance = (sum + (10 * whiteN2)) / (count + 10);
        return variance + (LeastN * LeastN);
    }
}
