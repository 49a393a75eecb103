namespace Jumpwright.Trials;

/// <summary>What lies round an edge of the force: where it is surely over, how steep it is, how the empty plate beyond it behaves.</summary>
internal static class EdgeSurroundings
{
    /// <summary>How far inside an edge its steep part is looked for, s.</summary>
    private const double InsideS = 0.03;

    /// <summary>Where the unrest of the empty plate is looked at, from and to this long beyond an edge, s.</summary>
    private const double UnrestFromS = 0.002;

    private const double UnrestToS = 0.035;

    /// <summary>From 10 % of the load to nothing an edge takes no longer than this, s.</summary>
    private const double LongestEdgeS = 0.03;

    /// <summary>Where the zero near an edge is read, from and to this long beyond it, s; how far off it may be, N.</summary>
    private const double LocalFromS = 0.012;

    private const double LocalToS = 0.08;
    private const double LocalMostN = 8;

    private const double SteepS = 0.005;

    /// <summary>So far a zero wanders from its mean, N (house estimate).</summary>
    private const double LocalN = 0.7;

    /// <summary>
    /// From well inside an edge outwards to the first sample below a level; null where the recording ends before, or the next contact
    /// begins: a zero that has drifted above the level is never below it.
    /// </summary>
    public static int? FirstBelow(
        ReadOnlySpan<double> forceN,
        double rateHz,
        int last,
        int way,
        PlateLevels levels,
        double low
    )
    {
        int inside = last;
        int most = Math.Max((int)(InsideS * rateHz), 3);
        double well = levels.ZeroN + (0.5 * levels.LoadN);
        for (int k = 0; k < most && inside - way >= 0 && inside - way < forceN.Length && forceN[inside] < well; k++)
        {
            inside -= way;
        }

        int i = inside;
        while (i >= 0 && i < forceN.Length && forceN[i] >= low)
        {
            if (way * (i - last) > 0 && forceN[i] > well)
            {
                return null;
            }

            i += way;
        }

        return i < 0 || i >= forceN.Length ? null : i;
    }

    /// <summary>How steep an edge is at its end, N/s, over five milliseconds.</summary>
    public static double Steepness(ReadOnlySpan<double> forceN, double rateHz, int first, int way, PlateLevels levels)
    {
        int over = Math.Max((int)Math.Round(SteepS * rateHz), 1);
        double inside = forceN[Math.Clamp(first - (way * (over + 1)), 0, forceN.Length - 1)] - levels.ZeroN;
        return Math.Max(inside, 0.02 * levels.LoadN) * rateHz / (over + 1);
    }

    /// <summary>The empty plate's reading near an edge, N: it may have wandered from its mean.</summary>
    public static double LocalZero(
        ReadOnlySpan<double> forceN,
        double rateHz,
        int first,
        int way,
        double zeroN,
        double noiseN
    )
    {
        double sum = 0;
        int n = 0;
        int far = (int)(LocalToS * rateHz);
        double most = Math.Max(5 * noiseN, LocalMostN);
        for (int k = (int)(LocalFromS * rateHz); k <= far; k++)
        {
            int i = first + (way * k);
            if (i < 0 || i >= forceN.Length || Math.Abs(forceN[i] - zeroN) > most)
            {
                break;
            }

            sum += forceN[i] - zeroN;
            n++;
        }

        double local = Math.Max(noiseN * noiseN, 0.01) * 2;
        return zeroN + (sum / (n + (local / (LocalN * LocalN))));
    }

    /// <summary>Greatest deviation from zero on the empty side of an edge, N, once the edge itself has ended.</summary>
    public static double Unrest(ReadOnlySpan<double> forceN, double rateHz, int last, int way, double zeroN, double low)
    {
        int ended = last + way;
        int most = (int)(LongestEdgeS * rateHz);
        for (int k = 1; k <= most && ended >= 0 && ended < forceN.Length && forceN[ended] - zeroN >= low; k++)
        {
            ended += way;
        }

        int near = Math.Max((int)(UnrestFromS * rateHz), 1);
        int far = (int)(UnrestToS * rateHz);
        double unrest = 0;
        for (int k = near; k <= far; k++)
        {
            int i = ended + (way * k);
            if (i < 0 || i >= forceN.Length)
            {
                break;
            }

            unrest = Math.Max(unrest, Math.Abs(forceN[i] - zeroN));
        }

        return unrest;
    }
}
