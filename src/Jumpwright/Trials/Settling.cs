namespace Jumpwright.Trials;

/// <summary>
/// The tail of a landing or of a step on the plate: the centre of mass still creeps to its standing height, and the force leans to
/// one side of the weight for as long. Sway leans to both sides, so a still stretch begins where its force first meets the
/// level of its later part (house rule). A tail taken for standing would pull the weight, or pass for a drifting zero.
/// </summary>
internal static class Settling
{
    /// <summary>A still stretch is never made shorter than this, s.</summary>
    private const double LeastLeftS = 1.2;

    /// <summary>The level is that of this last part of the stretch.</summary>
    private const double LaterPart = 0.5;

    /// <summary>Force so near the level is at it, N.</summary>
    private const double AtLevelN = 0.2;

    /// <summary>So many times the widest swing of the later part.</summary>
    private const double Wider = 2.5;

    private const double Within = 0.8;

    /// <summary>Blocks meaned before they are held against the level.</summary>
    private const int Smooth = 3;

    /// <summary>
    /// How many samples at the beginning of a still stretch are tail; and how many of those are more than sway would show, so
    /// that the rest may still tell how wide the sway is.
    /// </summary>
    /// <param name="forceN">Force of the stretch, N.</param>
    /// <param name="rateHz">Sampling rate, Hz.</param>
    public static (int Tail, int Swings) Samples(ReadOnlySpan<double> forceN, double rateHz)
    {
        int block = Math.Max((int)Math.Round(StillBlocks.BlockS * rateHz), 1);
        int most = (forceN.Length - (int)(LeastLeftS * rateHz)) / block;
        if (most <= 0)
        {
            return (0, 0);
        }

        int late = (int)(forceN.Length * (1 - LaterPart));
        double level = ForceSums.Total(forceN[late..]) / (forceN.Length - late);
        double usual = 0;
        for (int at = late; at + (Smooth * block) <= forceN.Length; at += block)
        {
            usual = Math.Max(usual, Math.Abs(Off(forceN, at, block, level)));
        }

        // Swings wider than any of the later part are the landing's: what comes before the last of them is too.
        int first = most;
        while (first > 0 && Math.Abs(Off(forceN, (first - 1) * block, block, level)) <= (Wider * usual) + AtLevelN)
        {
            first--;
        }

        // Well within what sway does later: nothing speaks for a tail.
        if (Math.Abs(Off(forceN, first * block, block, level)) <= (Within * usual) + AtLevelN)
        {
            return (first * block, first * block);
        }

        double side = 0;
        for (int k = first; k < most; k++)
        {
            double off = Off(forceN, k * block, block, level);
            if (Math.Abs(off) <= AtLevelN || off * side < 0)
            {
                return (k * block, first * block);
            }

            side = off;
        }

        return (most * block, first * block);
    }

    private static double Off(ReadOnlySpan<double> forceN, int at, int block, double levelN) =>
        (ForceSums.Total(forceN.Slice(at, Smooth * block)) / (Smooth * block)) - levelN;
}
