namespace Jumpwright.Trials;

/// <summary>
/// Take-offs that trail off: the force falls steeply nearly to nothing and then dies away over many milliseconds. Toes that drag do so, and so does
/// a plate whose swing is sampled near its own rate, which then looks like a slow force. Which of the two, nobody can tell from the force.
/// </summary>
internal static class TrailingEdges
{
    /// <summary>The steep part lies between these parts of the load.</summary>
    private const double FromPart = 0.35;

    private const double ToPart = 0.08;

    /// <summary>So long beyond where its steep part points, an edge is no edge, s (house rule, held by validation).</summary>
    private const double LongestS = 0.012;

    /// <summary>Names every take-off that trails off for so long.</summary>
    public static void Name(ReadOnlySpan<double> forceN, double rateHz, PlateLevels levels, List<Contact> contacts)
    {
        for (int k = 0; k < contacts.Count; k++)
        {
            if (
                contacts[k].TakeOff is { Unsettled: false } takeOff
                && Below(forceN, rateHz, contacts[k], levels, FromPart) is { } high
                && Below(forceN, rateHz, contacts[k], levels, ToPart) is { } low
                && (takeOff.Sample - low - ((low - high) * ToPart / (FromPart - ToPart))) / rateHz > LongestS
            )
            {
                contacts[k] = contacts[k] with { TakeOff = takeOff with { Unsettled = true } };
            }
        }
    }

    /// <summary>First sample of the last fall below a part of the load.</summary>
    private static int? Below(
        ReadOnlySpan<double> forceN,
        double rateHz,
        Contact contact,
        PlateLevels levels,
        double part
    ) =>
        EdgeSurroundings.FirstBelow(
            forceN,
            rateHz,
            contact.Samples.To - 1,
            +1,
            levels,
            levels.ZeroN + (part * levels.LoadN)
        );
}
