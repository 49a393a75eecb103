using System.Collections.Immutable;
using Jumpwright.Plans;

namespace Jumpwright.Planning;

/// <summary>Takes a tenth off the kit of a session whose items found no time line.</summary>
internal static class Tightening
{
    public static ImmutableDictionary<(string Kit, string Session), long> Of(
        ImmutableDictionary<(string Kit, string Session), long> seconds,
        SessionSlot slot,
        PlanRequest request
    )
    {
        foreach (string kit in request.Kit.Select(k => k.Id).Distinct(StringComparer.Ordinal))
        {
            long now = seconds.GetValueOrDefault((kit, slot.Id), request.KitSeconds(kit, slot));
            seconds = seconds.SetItem((kit, slot.Id), now * 9 / 10);
        }

        return seconds;
    }
}
