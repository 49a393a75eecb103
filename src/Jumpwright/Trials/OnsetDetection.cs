namespace Jumpwright.Trials;

/// <summary>
/// First instant of the jump's movement: where the force leaves the band of five standard deviations round the still weight,
/// stepped back 30 ms (Owen et al. 2014, J Strength Cond Res 28:1552–1558, doi:10.1519/JSC.0000000000000311).
/// </summary>
internal static class OnsetDetection
{
    private const double BandDeviations = 5;
    private const double StepBackS = 0.030;

    /// <summary>In the band for this long is standing; shorter is passing through.</summary>
    private const double StandingS = 0.045;

    /// <summary>What the rule can miss by, s: it sees a slow start late and a sharp one 30 ms early (house estimate).</summary>
    private const double RuleUncertaintyS = 0.015;

    /// <summary>The slope at the onset is read from and over this long after it, s.</summary>
    private const double SlopeFromS = 0.015;

    /// <summary>A smaller fall of the force than this part of the weight is sway.</summary>
    private const double DipPart = 0.03;

    /// <summary>The wider band, in bands.</summary>
    private const double WideBands = 2;

    /// <summary>The two bands are left this far apart only where the standing was restless, s (house estimate).</summary>
    private const double RestlessS = 0.06;

    /// <summary>Walks back from the surely moving sample to the last standing.</summary>
    /// <param name="forceN">Force with the zero corrected, N.</param>
    /// <param name="rateHz">Sampling rate, Hz.</param>
    /// <param name="moving">A sample in which the movement is well under way, outside the band.</param>
    /// <param name="earliest">No farther back than this.</param>
    /// <param name="weightN">Mean of the still stretch before it, N.</param>
    /// <param name="deviationN">Standard deviation of that stretch's samples, N.</param>
    /// <returns>Null where no standing is found.</returns>
    public static Instant? Before(
        ReadOnlySpan<double> forceN,
        double rateHz,
        int moving,
        int earliest,
        double weightN,
        double deviationN
    )
    {
        double band = Math.Max(BandDeviations * deviationN, 0.001 * weightN);
        int? narrow = Leaves(forceN, rateHz, moving, earliest, weightN, band);
        int? wide = Leaves(forceN, rateHz, moving, earliest, weightN, WideBands * band);
        double back = StepBackS * rateHz;
        double missed = narrow is { } leaves ? Missed(forceN, rateHz, leaves, moving, weightN, band) : 0;
        if (narrow is not { } first)
        {
            return wide is { } only ? new Instant(only - back, RestlessS) : null;
        }

        // Where a wave of sway leaves the band and returns long before the movement, the wider band tells the movement's own
        // start; a dip is part of the movement.
        double apart = wide is { } later ? (later - first) / rateHz : 0;
        return apart <= RestlessS ? new Instant(first - back, Math.Max(RuleUncertaintyS, missed))
            : Least(forceN[first..wide!.Value]) < ((1 - DipPart) * weightN) - (2 * deviationN)
                ? new Instant(first - back, apart / 2)
            : new Instant(wide.Value - back, apart / 2);
    }

    /// <summary>
    /// How far the fixed step back is from what the force itself tells, s: growing as a line or as a square of time, it took one
    /// or two times band over slope to leave the band.
    /// </summary>
    private static double Missed(
        ReadOnlySpan<double> forceN,
        double rateHz,
        int leaves,
        int moving,
        double weightN,
        double bandN
    )
    {
        int from = leaves + (int)(SlopeFromS * rateHz);
        int to = Math.Min(from + Math.Max((int)(SlopeFromS * rateHz), 2), forceN.Length);
        if (to - from < 2 || from > moving)
        {
            return 0;
        }

        double sum = 0;
        for (int i = from; i < to; i++)
        {
            sum += Math.Abs(forceN[i] - weightN);
        }

        double slope = ((sum / (to - from)) - bandN) / (((from + to) / 2.0) - leaves) * rateHz;
        return slope <= 0 ? RestlessS : Math.Min(Math.Abs((1.5 * bandN / slope) - StepBackS), RestlessS);
    }

    private static double Least(ReadOnlySpan<double> forceN)
    {
        double least = double.PositiveInfinity;
        foreach (double f in forceN)
        {
            least = Math.Min(least, f);
        }

        return least;
    }

    /// <summary>First sample after the last standing within a band; null where none is found.</summary>
    private static int? Leaves(
        ReadOnlySpan<double> forceN,
        double rateHz,
        int moving,
        int earliest,
        double weightN,
        double bandN
    )
    {
        int standing = Math.Max((int)Math.Ceiling(StandingS * rateHz), 4);
        int inside = 0;
        for (int i = moving; i >= earliest; i--)
        {
            inside = Math.Abs(forceN[i] - weightN) <= bandN ? inside + 1 : 0;
            if (inside >= standing)
            {
                return i + inside;
            }
        }

        return null;
    }
}
