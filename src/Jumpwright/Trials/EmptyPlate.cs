namespace Jumpwright.Trials;

/// <summary>The plate's zero and noise, from the stretches in which nobody stood on it.</summary>
/// <param name="ZeroN">Mean reading, N.</param>
/// <param name="ZeroUncertaintyN">Standard uncertainty of that mean, N.</param>
/// <param name="NoiseN">Standard deviation of one sample, N.</param>
/// <param name="MiddleSample">Mean time of those samples, as a sample index.</param>
/// <param name="DriftNS">Slope of the zero over them, N/s.</param>
/// <param name="DriftUncertaintyNS">Standard uncertainty of that slope, N/s; large where they span little time.</param>
/// <param name="Samples">How many samples it rests on; 0 where the plate was never empty.</param>
internal readonly record struct EmptyPlate(
    double ZeroN,
    double ZeroUncertaintyN,
    double NoiseN,
    double MiddleSample,
    double DriftNS,
    double DriftUncertaintyNS,
    int Samples
)
{
    /// <summary>A plate that was never empty may be off by this much, N: what a plate drifts after it was zeroed (house estimate).</summary>
    private const double UnknownZeroN = 2.5;

    /// <summary>No usable plate drifts faster, N/s.</summary>
    private const double MostDriftNS = 3;

    /// <summary>Hum and ringing make neighbours alike, so that a mean is less sure than of as many independent samples (house estimate).</summary>
    private const double ZeroAlike = 1.5;

    /// <summary>A zero's wander is looked for in means over so long, s, if there are as many; noise is at most so many times less sure for it.</summary>
    private const double WanderBlockS = 0.1;

    private const int FewestBlocks = 6;
    private const double MostWander = 12;

    private const double RingingS = 0.08;
    private const double EdgeS = 0.02;

    /// <summary>So far from empty, N and part of the load, somebody touched the plate: no reading of its zero.</summary>
    private const double TouchN = 60;

    private const double TouchPart = 0.08;

    /// <summary>Stepping on and off loads a plate slowly: where nobody flies, up to this long before and after is left out, s.</summary>
    private const double StepS = 0.3;

    /// <summary>The same for the sum of so many plates: each has a zero of its own where none was ever seen.</summary>
    public EmptyPlate OfSum(int plates) =>
        Samples > 0 ? this : this with { ZeroUncertaintyN = ZeroUncertaintyN * Math.Sqrt(plates) };

    public static EmptyPlate Of(
        ReadOnlySpan<double> forceN,
        double rateHz,
        IReadOnlyList<Contact> contacts,
        PlateLevels rough
    )
    {
        int ringing = (int)(RingingS * rateHz);
        int edge = (int)(EdgeS * rateHz);
        double n = 0;
        double sum = 0;
        double squares = 0;
        double times = 0;
        double timeSquares = 0;
        double products = 0;
        int block = Math.Max((int)(WanderBlockS * rateHz), 4);
        double inBlock = 0;
        double blockSum = 0;
        double blocks = 0;
        double blockMeans = 0;
        double blockSquares = 0;
        double blockTimes = 0;
        double blockTimeSquares = 0;
        double blockProducts = 0;
        double middle = forceN.Length / 2.0;
        double shift = rough.ZeroN;
        double most =
            rough.LoadN > 0 ? Math.Max(Math.Max(TouchN, 10 * rough.NoiseN), TouchPart * rough.LoadN) : double.MaxValue;
        int from = 0;
        for (int k = 0; k <= contacts.Count; k++)
        {
            int to = k < contacts.Count ? contacts[k].Samples.From : forceN.Length;
            bool flies = k > 0 && k < contacts.Count && to - from < Plate.LongestFlightS * rateHz;
            int margin = flies ? edge : Math.Max(edge, Math.Min((int)(StepS * rateHz), (to - from) / 3));
            int start = from + (k == 0 ? 0 : margin);
            int end = to - (k == contacts.Count ? 0 : margin);
            // A plate rings after take-off: leave that out where enough remains.
            if (k > 0 && end - start > 3 * ringing)
            {
                start += ringing;
            }

            for (int i = start; i < end; i++)
            {
                double f = forceN[i] - shift;
                if (Math.Abs(f) > most)
                {
                    continue;
                }

                sum += f;
                squares += f * f;
                double t = (i - middle) / rateHz;
                times += t;
                timeSquares += t * t;
                products += t * f;
                n++;
                blockSum += f;
                if (++inBlock == block)
                {
                    double m = blockSum / block;
                    double at = t - (block / 2.0 / rateHz);
                    blocks++;
                    blockMeans += m;
                    blockSquares += m * m;
                    blockTimes += at;
                    blockTimeSquares += at * at;
                    blockProducts += at * m;
                    (inBlock, blockSum) = (0, 0);
                }
            }

            (inBlock, blockSum) = (0, 0);

            from = k < contacts.Count ? contacts[k].Samples.To : to;
        }

        if (n < 8)
        {
            return new EmptyPlate(0, UnknownZeroN, rough.NoiseN, middle, 0, MostDriftNS, 0);
        }

        double mean = sum / n;
        double deviation = Math.Sqrt(Math.Max((squares / n) - (mean * mean), 0));
        double meanTime = times / n;
        double spread = Math.Max(timeSquares - (n * meanTime * meanTime), 1e-9);
        double drift = (products - (n * meanTime * mean)) / spread;
        // A zero that wanders shows in means of a tenth of a second: they differ from their line by more than white noise would.
        double wander = 1;
        if (blocks >= FewestBlocks)
        {
            double spanned = Math.Max(blockTimeSquares - (blockTimes * blockTimes / blocks), 1e-9);
            double along = blockProducts - (blockTimes * blockMeans / blocks);
            double left = blockSquares - (blockMeans * blockMeans / blocks) - (along * along / spanned);
            double seen = Math.Max(left, 0) / (blocks - 2);
            wander = Math.Clamp(Math.Sqrt(seen * block) / (deviation + 0.05), 1, MostWander);
        }

        // Hum and ringing make neighbours alike: count one independent sample in four.
        double driftU = (ZeroAlike * wander * (deviation + 0.05) / Math.Sqrt(spread)) + (0.05 / Math.Sqrt(spread / n));
        if (driftU > MostDriftNS)
        {
            (drift, driftU) = (0, MostDriftNS);
        }

        double zeroU = (ZeroAlike * wander * deviation / Math.Sqrt(n)) + 0.02;
        return new EmptyPlate(shift + mean, zeroU, deviation, middle + (meanTime * rateHz), drift, driftU, (int)n);
    }
}
