namespace Jumpwright.Trials;

/// <summary>
/// Slow force between 0.3 and 3 Hz under standing people, as a sum of waves (house model). As a motion of the centre of mass a
/// wave of force is a wave of velocity and of position too, so it is bounded: over a still stretch it nearly averages out, and
/// it tells its own velocity.
/// </summary>
internal static class Sway
{
    public const int Waves = 15;

    /// <summary>Unknown amplitudes of a set of waves: a cosine and a sine each.</summary>
    public const int Amplitudes = 2 * Waves;

    private const double LowestHz = 0.27;
    private const double HighestHz = 3.1;

    /// <summary>Waves lie evenly in the logarithm below this and evenly in frequency above, Hz: as a stretch of seconds tells them apart.</summary>
    private const double BendHz = 1;

    private static readonly double[] Edges = [.. Enumerable.Range(0, Waves + 1).Select(Edge)];

    private static readonly double[] Frequencies =
    [
        .. Enumerable.Range(0, Waves).Select(j => Math.PI * (Edges[j] + Edges[j + 1])),
    ];

    private static readonly double[] Even = Variances(1);

    /// <summary>Angular frequencies, rad/s.</summary>
    public static ReadOnlySpan<double> AngularFrequencies => Frequencies;

    /// <summary>
    /// Variance of each wave's two amplitudes for a sway of unit variance whose power falls as frequency to the minus
    /// <paramref name="colour"/>: at 1 every octave holds the same.
    /// </summary>
    public static double[] Variances(double colour)
    {
        double[] variances = [.. Frequencies.Select((w, j) => Math.Pow(w, -colour) * (Edges[j + 1] - Edges[j]))];
        double sum = variances.Sum();
        return [.. variances.Select(v => v / sum)];
    }

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
            visible += (1 - (mean * mean)) * Even[j];
        }

        return visible;
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
