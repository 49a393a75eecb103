using Jumpwright.Quantities;

namespace Jumpwright.Trials;

/// <summary>
/// A plate at its limit writes its greatest value again and again, and comes to it at full slope; the rounded top of a real
/// curve comes to its greatest value by the smallest steps there are.
/// </summary>
internal static class Saturation
{
    /// <summary>At the limit for at least this long, s, and this many samples.</summary>
    private const double LeastS = 0.003;

    private const int LeastSamples = 4;

    /// <summary>A step into the limit from this far below, N, is no rounded top.</summary>
    private const double StepN = 3;

    public static Refusal? Find(Plate plate, ReadOnlySpan<double> channelN)
    {
        int at = 0;
        for (int i = 1; i < channelN.Length; i++)
        {
            at = channelN[i] > channelN[at] ? i : at;
        }

        double most = channelN[at];
        int count = 0;
        bool stepped = false;
        for (int i = at; i < channelN.Length; i++)
        {
            if (channelN[i] != most)
            {
                continue;
            }

            count++;
            stepped |=
                (i > 0 && most - channelN[i - 1] > StepN)
                || (i + 1 < channelN.Length && most - channelN[i + 1] > StepN);
        }

        bool lasting = count >= Math.Max(LeastSamples, LeastS * plate.RateHz);
        bool loaded = most > 0.6 * plate.Levels.LoadN && most > 100;
        return lasting && stepped && loaded ? Refusals.Saturated(plate.TimeS(at), most) : null;
    }
}
