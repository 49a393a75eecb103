namespace Jumpwright.Trials;

/// <summary>
/// A reading that swings below its zero once the feet have left, and stays there for some twenty milliseconds: no body pulls at a plate,
/// and a plate that rings does so many times as fast. Something between plate and file is slower than the jump: an amplifier or a filter that
/// passes little above some tens of hertz. It delays and smears edges, so that flights and contacts are off by milliseconds, and nothing in the noise
/// shows it where the noise came in behind.
/// </summary>
internal static class SwingBack
{
    /// <summary>Looked at from so long after a take-off until so long after it, s: a swing of 90 Hz and more averages out over two of its turns.</summary>
    private const double FromS = 0.004;

    private const double ToS = 0.026;

    /// <summary>The zero is read from so long after a take-off, until so long before the next touch-down, for so long, s.</summary>
    private const double ZeroFromS = 0.06;

    private const double ZeroBeforeS = 0.02;
    private const double LeastZeroS = 0.04;
    private const double MostZeroS = 0.3;

    /// <summary>Less than so much below zero may be a plate's own creep, N; and so many times what noise makes of it (house rules, held by simulated filters).</summary>
    private const double LeastN = 1.5;

    private const double Noises = 5;

    /// <summary>What swings on for as long again with more than this part of its square is a plate that rings, and most of those read the force right.</summary>
    private const double RingsPart = 0.15;

    /// <summary>
    /// How far below its zero the plate swings after every take-off, N, the least of them; 0 where it does not. (A foot that grazes it, or a
    /// thud beside it, comes after one.)
    /// </summary>
    public static double Newtons(Plate plate)
    {
        double least = double.PositiveInfinity;
        for (int k = 0; k < plate.Contacts.Count; k++)
        {
            if (plate.Contacts[k].TakeOff is not { } takeOff)
            {
                continue;
            }

            double next = plate.ForceN.Length;
            if (k + 1 < plate.Contacts.Count)
            {
                next = plate.Contacts[k + 1].TouchDown?.Sample ?? plate.Contacts[k + 1].Samples.From;
            }

            least = Math.Min(least, Newtons(plate, takeOff.Sample, next) ?? least);
        }

        return double.IsFinite(least) ? least : 0;
    }

    /// <summary>The same of one take-off; null where its zero can't be read.</summary>
    private static double? Newtons(Plate plate, double takeOff, double next)
    {
        double rate = plate.RateHz;
        int zeroFrom = (int)Math.Ceiling(takeOff + (ZeroFromS * rate));
        int zeroTo = (int)Math.Min(next - (ZeroBeforeS * rate), zeroFrom + (MostZeroS * rate));
        if (zeroTo - zeroFrom < LeastZeroS * rate)
        {
            return null;
        }

        int from = (int)Math.Ceiling(takeOff + (FromS * rate));
        int to = (int)Math.Floor(takeOff + (ToS * rate));
        double weights = 0;
        double squares = 0;
        double below = 0;
        double zero = ForceSums.Total(plate.ForceN[zeroFrom..zeroTo]) / (zeroTo - zeroFrom);
        for (int i = from; i <= to; i++)
        {
            double part = (((i - takeOff) / rate) - FromS) / (ToS - FromS);
            double weight = (1 - Math.Cos(2 * Math.PI * part)) / 2;
            weights += weight;
            squares += weight * weight;
            below += weight * (zero - plate.ForceN[i]);
        }

        double noise = plate.Levels.NoiseN * Math.Sqrt((squares / (weights * weights)) + (1.0 / (zeroTo - zeroFrom)));
        below /= weights;
        if (below < Math.Max(LeastN, Noises * noise))
        {
            return 0;
        }

        double white = plate.Levels.NoiseN * plate.Levels.NoiseN;
        double first = (ForceSums.Squares(plate.ForceN[from..to], zero) / (to - from)) - white;
        int on = Math.Min(to + to - from, plate.ForceN.Length);
        double later = (ForceSums.Squares(plate.ForceN[to..on], zero) / (on - to)) - white;
        return later < RingsPart * first ? below : 0;
    }
}
