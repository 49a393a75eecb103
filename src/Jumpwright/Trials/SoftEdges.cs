namespace Jumpwright.Trials;

/// <summary>
/// Touch-downs that begin below the noise: a foot that is put down softly bears some newtons for ten milliseconds before anything shows, and
/// no curve through what follows tells how long. Whoever comes down from a flight on the plate arrives at a metre a second, so that only the
/// first contact may be so.
/// </summary>
internal static class SoftEdges
{
    /// <summary>So long after a touch-down its force must stand out from the noise, s.</summary>
    private const double InsideS = 0.005;

    /// <summary>By so many standard deviations of a sample (house rule, held by validation).</summary>
    private const double Noises = 5;

    /// <summary>Names every touch-down that is too soft for the noise.</summary>
    public static void Name(
        ReadOnlySpan<double> forceN,
        double rateHz,
        PlateLevels levels,
        double noiseN,
        List<Contact> contacts
    )
    {
        for (int k = 0; k < contacts.Count; k++)
        {
            if (
                (k == 0 || (contacts[k].Samples.From - contacts[k - 1].Samples.To) / rateHz > Plate.LongestFlightS)
                && contacts[k].TouchDown is { Unsettled: false } touchDown
                && Rise(forceN, rateHz, touchDown) - levels.ZeroN < Noises * noiseN
            )
            {
                contacts[k] = contacts[k] with { TouchDown = touchDown with { Unsettled = true } };
            }
        }
    }

    /// <summary>Mean force round that long after a touch-down, N.</summary>
    private static double Rise(ReadOnlySpan<double> forceN, double rateHz, Instant touchDown)
    {
        double middle = touchDown.Sample + (InsideS * rateHz);
        double half = Math.Max(InsideS * rateHz / 4, 0.5);
        int from = Math.Clamp((int)Math.Ceiling(middle - half), 0, forceN.Length - 1);
        int to = Math.Clamp((int)Math.Floor(middle + half), from, forceN.Length - 1);
        return ForceSums.Total(forceN[from..(to + 1)]) / (to + 1 - from);
    }
}
