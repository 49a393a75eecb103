using System.Runtime.InteropServices;
using Jumpwright.Quantities;

namespace Jumpwright.Trials;

/// <summary>
/// A plate at its limit writes its greatest value again and again without a break, and comes to it at full slope; the rounded
/// top of a real curve comes to its greatest value by the smallest steps there are.
/// </summary>
internal static class Saturation
{
    /// <summary>At the limit for at least this long, s, and this many samples.</summary>
    private const double LeastS = 0.003;

    private const int LeastSamples = 4;

    /// <summary>
    /// Half as long before and after, a rounded top lies three steps of the file lower, for it lay within one step all the while.
    /// A top cut off lies lower than this many steps, noises and newtons.
    /// </summary>
    private const double LowerSteps = 6;

    private const double LowerNoises = 4;
    private const double LowerN = 4;

    public static Refusal? Find(Plate plate, ReadOnlySpan<double> channelN)
    {
        double most = Samples.Greatest(channelN);
        if (most <= 0.6 * plate.Levels.LoadN || most <= 100)
        {
            return null;
        }

        int least = Math.Max(LeastSamples, (int)Math.Ceiling(LeastS * plate.RateHz));
        // A number above nothing is written in one way: as bits it is found many at a time.
        ReadOnlySpan<long> bits = MemoryMarshal.Cast<double, long>(channelN);
        int first = bits.IndexOf(BitConverter.DoubleToInt64Bits(most));
        int last = bits.LastIndexOf(BitConverter.DoubleToInt64Bits(most));
        // So long a run holds one of every so many samples.
        for (int k = first + least - 1; k <= last; k += least)
        {
            if (channelN[k] != most)
            {
                continue;
            }

            int from = k;
            while (from > 0 && channelN[from - 1] == most)
            {
                from--;
            }

            int i = k;
            while (i + 1 < channelN.Length && channelN[i + 1] == most)
            {
                i++;
            }

            int half = Math.Max((i - from + 1) / 2, 1);
            double before = from >= half ? most - channelN[from - half] : 0;
            double after = i + half < channelN.Length ? most - channelN[i + half] : 0;
            if (i - from + 1 < least || Math.Min(before, after) < LowerN)
            {
                continue;
            }

            double lower = (LowerSteps * Step(channelN, from, i)) + (LowerNoises * plate.Levels.NoiseN);
            if (Math.Min(before, after) > lower)
            {
                return Refusals.Saturated(plate.TimeS(from), most);
            }
        }

        return null;
    }

    /// <summary>Smallest step between neighbours in the file round the limit, N.</summary>
    private static double Step(ReadOnlySpan<double> channelN, int from, int to)
    {
        double step = double.PositiveInfinity;
        int first = Math.Max(from - 200, 1);
        int last = Math.Min(to + 200, channelN.Length - 1);
        for (int i = first; i <= last; i++)
        {
            double d = Math.Abs(channelN[i] - channelN[i - 1]);
            step = d > 1e-6 ? Math.Min(step, d) : step;
        }

        return double.IsInfinity(step) ? 0 : step;
    }
}
