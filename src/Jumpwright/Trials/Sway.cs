namespace Jumpwright.Trials;

/// <summary>
/// How standing people sway, as far as a force recording is concerned: slow force between 0.3 and 3 Hz, a sum of waves of which
/// the slow ones matter as much as the fast (equal variance per octave; house model). A wave of force is a wave of velocity and
/// of position too, so sway is bounded: over a still stretch it nearly averages out, and it tells its own velocity.
/// </summary>
internal static class Sway
{
    public const int Waves = 12;
    private const double LowestHz = 0.3;
    private const double HighestHz = 3.0;

    /// <summary>Variance of each wave's two amplitudes for a sway of unit variance.</summary>
    public const double VariancePerWave = 1.0 / Waves;

    private static readonly double[] Frequencies =
    [
        .. Enumerable
            .Range(0, Waves)
            .Select(j => 2 * Math.PI * LowestHz * Math.Pow(HighestHz / LowestHz, (j + 0.5) / Waves)),
    ];

    /// <summary>Angular frequencies, rad/s.</summary>
    public static ReadOnlySpan<double> AngularFrequencies => Frequencies;

    /// <summary>
    /// Part of the sway's variance that shows as variance within a stretch of that length, s; the rest hides in its mean.
    /// </summary>
    public static double VisiblePart(double seconds)
    {
        double visible = 0;
        foreach (double w in Frequencies)
        {
            double half = w * seconds / 2;
            double mean = Math.Sin(half) / half;
            visible += VariancePerWave * (1 - (mean * mean));
        }

        return visible;
    }
}
