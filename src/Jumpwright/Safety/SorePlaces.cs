using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Safety.Symptoms;
using NodaTime;

namespace Jumpwright.Safety;

/// <summary>
/// Where it hurts, asked on the floor, on a card and in a log alike: which places count, and at which any pain, whatever its number, stops the work
/// (<c>common practice</c>, as the rule of bone pain says).
/// </summary>
public static class SorePlaces
{
    /// <summary>The places of an athlete that still count on a day, as the rules of safety read them; the last written first.</summary>
    public static ImmutableArray<SorePlace> Of(History history, LocalDate day)
    {
        ArgumentNullException.ThrowIfNull(history);
        return
        [
            .. new SafetyCase(history, day, null)
                .Episodes.OrderByDescending(e => e.Counting.Union(e.Recent).Max(r => r.Date))
                .Select(e => new SorePlace(e.Site.Name, e.Site.Side, MayBeBone(e.Readings))),
        ];
    }

    /// <summary>Whether pain at a place may be of a bone, as long as nobody licensed has named the tissue; of a place that nobody knows it may.</summary>
    /// <param name="site">As somebody wrote it.</param>
    public static bool MayBeBone(string site) => MayBeBone(PainReadings.Of(BodySite.Of(site, Side.Unknown), []));

    private static bool MayBeBone(ImmutableArray<PainReading> readings) =>
        readings.Any(r => r.Kind == PainRuleKind.Bone);
}
