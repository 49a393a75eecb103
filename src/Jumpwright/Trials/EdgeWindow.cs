namespace Jumpwright.Trials;

/// <summary>The samples round one edge of the force, counted inwards from its first sample that is not surely loaded.</summary>
internal readonly ref struct EdgeWindow
{
    /// <summary>Part of the load up to which the edge is looked at, for how long, and over how many samples at least.</summary>
    private const double TopPart = 0.4;

    private const double LongestS = 0.02;

    /// <summary>A force that turns before it has reached this part of the load is no edge yet: a tail, or a plate that rings.</summary>
    public const double LeastTopPart = 0.1;

    public const int Fewest = 3;

    /// <summary>As many more where the outermost may be the plate's swing.</summary>
    private const int MoreSwinging = 2;

    /// <summary>No edge ends farther out from its last surely loaded sample than this, s.</summary>
    private const double FarthestS = 0.009;

    /// <summary>What no curve of an edge explains, part of the force; what no ringing explains of itself (house estimates).</summary>
    private const double Misfit = 0.01;

    private const double RingingMisfit = 0.03;

    /// <summary>Above the part of the load that is looked at, an edge soon is no power of time any more: so much more for each such part (house estimate).</summary>
    private const double MisfitBeyond = 0.04;

    private EdgeWindow(
        Span<double> forceN,
        Span<double> weights,
        int outside,
        double earliest,
        double loadN,
        bool swings
    )
    {
        ForceN = forceN;
        Weights = weights;
        Outside = outside;
        Earliest = earliest;
        LoadN = loadN;
        Swings = swings;
        Top = Math.Max(Samples.Greatest(forceN), 1);
    }

    /// <summary>Force above zero, N, from the outermost sample inwards.</summary>
    public ReadOnlySpan<double> ForceN { get; }

    /// <summary>One over each sample's variance, 1/N².</summary>
    public ReadOnlySpan<double> Weights { get; }

    /// <summary>How many of the samples lie outside the first one.</summary>
    public int Outside { get; }

    /// <summary>The farthest out that the edge may end, samples inwards of the first one (negative).</summary>
    public double Earliest { get; }

    public double LoadN { get; }

    /// <summary>True where the plate may swing.</summary>
    public bool Swings { get; }

    /// <summary>Greatest force of the window, N.</summary>
    public double Top { get; }

    /// <summary>Samples from the first one to the innermost.</summary>
    public double Reach => ForceN.Length - 1 - Outside;

    /// <summary>Room that a window needs: as much for its weights as for its samples.</summary>
    public static int Room(double rateHz, double ringsS) =>
        2
        * (
            Math.Max((int)((FarthestS + ringsS) * rateHz), 2)
            + Math.Max((int)(LongestS * rateHz), Fewest + MoreSwinging)
            + 1
        );

    /// <summary>Takes the samples of an edge.</summary>
    /// <param name="edge">The edge.</param>
    /// <param name="forceN">Force, N.</param>
    /// <param name="rateHz">Sampling rate, Hz.</param>
    /// <param name="ringsS">How long beyond the edge the plate is looked at, s; 0 for a quiet one.</param>
    /// <param name="room">Room for force and weights.</param>
    /// <param name="window">The window.</param>
    /// <returns>False where there are too few samples, or no edge in them.</returns>
    public static bool TryTake(
        in EdgeSide edge,
        ReadOnlySpan<double> forceN,
        double rateHz,
        double ringsS,
        Span<double> room,
        out EdgeWindow window
    )
    {
        window = default;
        Span<double> y = room[..(room.Length / 2)];
        int outside = Math.Max((int)((FarthestS + ringsS) * rateHz), 2);
        int fewest = Fewest + (ringsS > 0 ? MoreSwinging : 0);
        int longest = Math.Max((int)(LongestS * rateHz), fewest);
        double turns = (4 * edge.NoiseN) + edge.RingingN;
        int n = 0;
        bool turned = false;
        for (int k = -outside; k <= longest; k++)
        {
            int j = edge.First - (edge.Way * k);
            if (j < 0 || j >= forceN.Length)
            {
                if (k > 0)
                {
                    break;
                }

                outside = -k - 1;
                n = 0;
                continue;
            }

            double f = forceN[j] - edge.ZeroN;
            // Up to the top, or to where the force turns.
            turned = f < y[Math.Max(n - 1, 0)] - turns;
            if (k > fewest && (f > TopPart * edge.LoadN || turned))
            {
                break;
            }

            y[n++] = f;
        }

        if (n - outside <= Fewest || (turned && Samples.Greatest(y[..n]) < LeastTopPart * edge.LoadN))
        {
            return false;
        }

        y = y[..n];
        Span<double> weights = room.Slice(room.Length / 2, n);
        double ringing = RingingMisfit * edge.RingingN;
        double top = TopPart * edge.LoadN;
        double white = (Math.Max(edge.NoiseN, 0.3) * Math.Max(edge.NoiseN, 0.3)) + (ringing * ringing);
        for (int k = 0; k < n; k++)
        {
            double misfit = (Misfit + (MisfitBeyond * Math.Max((y[k] / top) - 1, 0))) * Math.Max(y[k], 0);
            weights[k] = 1 / (white + (misfit * misfit));
        }

        double earliest = -Math.Min(outside, Math.Max((int)(FarthestS * rateHz), 2));
        window = new EdgeWindow(y, weights, outside, earliest, edge.LoadN, ringsS > 0);
        return true;
    }
}
