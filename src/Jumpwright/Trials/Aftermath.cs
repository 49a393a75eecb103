namespace Jumpwright.Trials;

/// <summary>
/// The first samples after a take-off, when nobody is on the plate any more: what they show is the plate's alone, and tells whether it swings.
/// </summary>
/// <param name="From">First of them.</param>
/// <param name="To">Behind the last of them.</param>
/// <param name="TakeOff">When the feet left.</param>
/// <param name="ZeroN">What the empty plate reads there, N.</param>
internal readonly record struct Aftermath(int From, int To, Instant TakeOff, double ZeroN)
{
    /// <summary>From so long after a take-off, for so long, and until so long before the next touch-down, s.</summary>
    private const double FromS = 0.001;

    private const double ForS = 0.06;
    private const double UntilS = 0.003;

    private const int MostTakeOffs = 6;
    private const int FewestSamples = 6;

    /// <summary>No recording is quieter than this, N.</summary>
    private const double LeastN = 0.3;

    /// <summary>So long a plate that swings is surely not quiet yet, s.</summary>
    private const double UnquietS = 0.01;

    /// <summary>Squares let go where there are few.</summary>
    private const double ForFew = 4;

    /// <summary>More than noise makes of <see cref="Unrest"/>, and no more than it usually makes.</summary>
    public const double MostOfNoise = 4;

    public const double UsualOfNoise = 1;

    /// <summary>
    /// What noise hides of a swing is about twice its deviation in size, and a plate that swings so little follows an edge of a steepness
    /// later by no more than that over the steepness. Less than so long, s, or than so much of the edge's own doubt, is nothing
    /// (house estimates, held by validation).
    /// </summary>
    private const double HiddenNoises = 2;

    private const double HiddenS = 0.0001;
    private const double HiddenPart = 0.4;

    /// <summary>Slower sampling folds a swing, and too few samples stand before the plate is quiet again, Hz.</summary>
    private const double SlowestHz = 500;

    /// <summary>Variance of a sample by noise alone, N².</summary>
    public static double White(double noiseN) => Math.Max(noiseN, LeastN) * Math.Max(noiseN, LeastN);

    /// <summary>Of each of the first take-offs.</summary>
    public static List<Aftermath> Of(
        ReadOnlySpan<double> forceN,
        double rateHz,
        double noiseN,
        PlateLevels levels,
        IReadOnlyList<Contact> contacts
    )
    {
        var found = new List<Aftermath>();
        for (int k = 0; k < contacts.Count && found.Count < MostTakeOffs; k++)
        {
            if (contacts[k].TakeOff is not { } takeOff)
            {
                continue;
            }

            double at = takeOff.Sample;
            double next = forceN.Length;
            if (k + 1 < contacts.Count)
            {
                next = contacts[k + 1].TouchDown?.Sample ?? contacts[k + 1].Samples.From;
            }

            int from = (int)Math.Ceiling(at + (FromS * rateHz));
            int to = (int)Math.Min(at + (ForS * rateHz), Math.Min(next - (UntilS * rateHz), forceN.Length));
            if (to - from >= FewestSamples)
            {
                double zero = EdgeSurroundings.LocalZero(
                    forceN,
                    rateHz,
                    (int)Math.Ceiling(at),
                    1,
                    levels.ZeroN,
                    noiseN
                );
                found.Add(new Aftermath(from, to, takeOff, zero));
            }
        }

        return found;
    }

    /// <summary>
    /// Whether the plate surely has no swing worth asking for: a plate that swings does so after each take-off, and most after the
    /// steepest; so there it is as quiet as its noise, and no swing that hides in that moves an edge. False where nobody took off.
    /// </summary>
    public static bool IsSilent(
        ReadOnlySpan<double> forceN,
        double rateHz,
        double noiseN,
        PlateLevels levels,
        List<Aftermath> found
    )
    {
        if (rateHz < SlowestHz)
        {
            return false;
        }

        double white = White(noiseN);
        double steepest = 0;
        bool silent = false;
        foreach (Aftermath after in found)
        {
            (double sample, double u, bool unsettled) = after.TakeOff;
            double steepness = EdgeSurroundings.Steepness(forceN, rateHz, (int)Math.Ceiling(sample), 1, levels);
            if (steepness > steepest)
            {
                steepest = steepness;
                double hidden = HiddenNoises * Math.Sqrt(white) / steepness;
                silent =
                    !unsettled
                    && hidden < Math.Max(HiddenS, HiddenPart * u)
                    && Unrest(forceN, rateHz, white, [after]) < UsualOfNoise;
            }
        }

        return silent;
    }

    /// <summary>
    /// How much less quiet the plate is right after take-offs than noise makes it, in deviations of the sum of so many squares of
    /// normal noise.
    /// </summary>
    public static double Unrest(ReadOnlySpan<double> forceN, double rateHz, double white, List<Aftermath> found)
    {
        double energy = 0;
        double count = 0;
        foreach (Aftermath after in found)
        {
            int to = Math.Min(after.From + Math.Max((int)(UnquietS * rateHz), 4), after.To);
            for (int i = after.From; i < to; i++)
            {
                energy += (forceN[i] - after.ZeroN) * (forceN[i] - after.ZeroN);
                count++;
            }
        }

        return count > 0 ? ((energy / white) - count - ForFew) / Math.Sqrt(2 * count) : 0;
    }
}
