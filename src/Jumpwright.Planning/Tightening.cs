using System.Collections.Immutable;
using Jumpwright.Planning.Rotations;
using Jumpwright.Plans;

namespace Jumpwright.Planning;

/// <summary>Takes some of the kit away from a session whose items found no time line.</summary>
internal static class Tightening
{
    /// <summary>
    /// A twentieth off the kit without which the session would fit; where no single kit is to blame, off all of them.
    /// </summary>
    public static ImmutableDictionary<(string Kit, string Session), long> Of(
        ImmutableDictionary<(string Kit, string Session), long> seconds,
        SessionSlot slot,
        PlanRequest request,
        ImmutableArray<Chosen> chosen
    )
    {
        ImmutableArray<Block> blocks = Blocks.Of(request, slot, chosen);
        Gym gym = Gym.Of(request, slot);
        string[] kits =
        [
            .. blocks
                .SelectMany(b => b.Kit.Select(k => k.Id))
                .Distinct(StringComparer.Ordinal)
                .Order(StringComparer.Ordinal),
        ];
        string[] toBlame = [.. kits.Where(kit => FitsWithout(kit, blocks, gym))];
        foreach (string kit in toBlame.Length > 0 ? toBlame : kits)
        {
            // What is used now, not what may be used: else the next plan could be the same.
            long used = blocks.Sum(b => b.Kit.Where(k => k.Id == kit).Sum(k => (long)k.Count * b.Seconds));
            long now = Math.Min(used, seconds.GetValueOrDefault((kit, slot.Id), request.KitSeconds(kit, slot)));
            seconds = seconds.SetItem((kit, slot.Id), now * 19 / 20);
        }

        return seconds;
    }

    private static bool FitsWithout(string kit, ImmutableArray<Block> blocks, Gym gym) =>
        Rotating.Of([.. blocks.Select(b => b with { Kit = b.Kit.RemoveAll(k => k.Id == kit) })], gym, 0.2).Timeline
            is not null;
}
