namespace Jumpwright.Trials;

/// <summary>How long a plate takes to follow, seen in its dips after take-offs, and what that leaves open of every edge.</summary>
internal static class PlateSwing
{
    /// <summary>How soon after a take-off a plate swings below nothing, s; how long it may take to follow, s.</summary>
    private const double SwingS = 0.008;

    private const double LongestSwingS = 0.0015;

    /// <summary>So much of that moves an edge (house estimate, held by validation).</summary>
    private const double SwingMoves = 0.8;

    /// <summary>Widens every edge by what the plate's following leaves open.</summary>
    public static void Widen(
        ReadOnlySpan<double> forceN,
        double rateHz,
        PlateLevels levels,
        double noiseN,
        List<Contact> contacts
    )
    {
        if (Swing(forceN, rateHz, levels, noiseN, contacts) is > 0 and var swingS)
        {
            for (int k = 0; k < contacts.Count; k++)
            {
                contacts[k] = contacts[k] with
                {
                    TouchDown = Widened(contacts[k].TouchDown, swingS),
                    TakeOff = Widened(contacts[k].TakeOff, swingS),
                };
            }
        }
    }

    private static Instant? Widened(Instant? instant, double swingS) =>
        instant is { } it
            ? it with
            {
                UncertaintyS = PushMeasures.Quadrature(it.UncertaintyS, SwingMoves * swingS),
            }
            : null;

    /// <summary>
    /// How long a plate takes to follow an edge, s: after a take-off it swings below nothing by the edge's steepness times that.
    /// Nobody pulls a plate up, so that every dip is the plate's own; its touch-downs are seen through the same swing.
    /// </summary>
    private static double Swing(
        ReadOnlySpan<double> forceN,
        double rateHz,
        PlateLevels levels,
        double noiseN,
        List<Contact> contacts
    )
    {
        double sum = 0;
        int n = 0;
        foreach (Contact contact in contacts)
        {
            if (contact.TakeOff is not { } takeOff)
            {
                continue;
            }

            int first = (int)Math.Ceiling(takeOff.Sample);
            double dip = 0;
            for (int i = first; i < Math.Min(first + Math.Max((int)(SwingS * rateHz), 2), forceN.Length); i++)
            {
                dip = Math.Max(dip, levels.ZeroN - forceN[i]);
            }

            dip = Math.Max(dip - (3 * noiseN), 0);
            sum += Math.Min(dip / EdgeSurroundings.Steepness(forceN, rateHz, first, 1, levels), LongestSwingS);
            n++;
        }

        return n == 0 ? 0 : sum / n;
    }
}
