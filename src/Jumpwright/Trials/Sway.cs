namespace Jumpwright.Trials;

/// <summary>
/// Slow force between 0.3 and 3 Hz under standing people, as a sum of waves (house model). As a motion of the centre of mass a
/// wave of force is a wave of velocity and of position too, so it is bounded: over a still stretch it nearly averages out, and
/// it tells its own velocity.
/// </summary>
internal static class Sway
{
    /// <summary>As many as fill whole vectors.</summary>
    public const int Waves = 16;

    private const double LowestHz = 0.27;
    private const double HighestHz = 3.1;

    /// <summary>Waves lie evenly in the logarithm below this and evenly in frequency above, Hz: as a stretch of seconds tells them apart.</summary>
    private const double BendHz = 1;

    private static readonly double[] Edges = [.. Enumerable.Range(0, Waves + 1).Select(Edge)];

    private static readonly double[] Frequencies =
    [
        .. Enumerable.Range(0, Waves).Select(j => Math.PI * (Edges[j] + Edges[j + 1])),
    ];

    /// <summary>Power of the force falls as frequency to the minus this: at 1 every octave holds the same (house estimate).</summary>
    private const double Colour = 1.15;

    private static readonly double[] Shares = SharesOf(Colour);

    private static readonly double[] EvenShares = SharesOf(1);

    /// <summary>Angular frequencies, rad/s.</summary>
    public static ReadOnlySpan<double> AngularFrequencies => Frequencies;

    /// <summary>Variance of each wave's two amplitudes for a sway of unit variance.</summary>
    public static ReadOnlySpan<double> Variances => Shares;

    /// <summary>Sum of the logarithms of those.</summary>
    public static double LogVariances { get; } = Shares.Sum(Math.Log);

    /// <summary>
    /// Part of an even sway's variance that shows as variance within a stretch of that length, s; the rest hides in its mean.
    /// </summary>
    public static double VisiblePart(double seconds)
    {
        double visible = 0;
        for (int j = 0; j < Waves; j++)
        {
            double half = Frequencies[j] * seconds / 2;
            double mean = Math.Sin(half) / half;
            visible += (1 - (mean * mean)) * EvenShares[j];
        }

        return visible;
    }

    private static double[] SharesOf(double colour)
    {
        double[] variances = [.. Frequencies.Select((w, j) => Math.Pow(w, -colour) * (Edges[j + 1] - Edges[j]))];
        double sum = variances.Sum();
        return [.. variances.Select(v => v / sum)];
    }

    private static double Edge(int edge)
    {
        // Logarithm below the bend and frequency above it, joined with one slope.
        double all = Math.Log(BendHz / LowestHz) + ((HighestHz - BendHz) / BendHz);
        double along = edge * all / Waves;
        double below = Math.Log(BendHz / LowestHz);
        return along < below ? LowestHz * Math.Exp(along) : BendHz * (1 + along - below);
    }
}
