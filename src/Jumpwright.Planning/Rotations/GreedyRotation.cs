using System.Collections.Immutable;
using Jumpwright.Exercises;

namespace Jumpwright.Planning.Rotations;

/// <summary>
/// Places blocks as they come free, without waiting: fast, and readable on the floor. May miss a time line that exists.
/// </summary>
internal static class GreedyRotation
{
    /// <summary>Tries a few orders of preference; null when none of them fits.</summary>
    public static Timeline? Try(ImmutableArray<Block> blocks, Gym gym)
    {
        var demand = blocks
            .SelectMany(b => b.Kit.Select(k => (k.Id, Seconds: k.Count * b.Seconds)))
            .GroupBy(k => k.Id, StringComparer.Ordinal)
            .ToDictionary(
                g => g.Key,
                g => g.Sum(k => k.Seconds) / (double)Math.Max(1, gym.CountOf(g.Key)),
                StringComparer.Ordinal
            );
        double Scarcity(Block block) => block.Kit.Length == 0 ? 0 : block.Kit.Max(k => demand[k.Id]);
        double Fresh(Block block) => block.Phase == 1 ? 100_000 : 0;
        Func<Block, int, double>[] preferences =
        [
            (block, left) => Fresh(block) + Scarcity(block) + left,
            (block, left) => Fresh(block) + left,
            (block, left) => Fresh(block) + (10 * Scarcity(block)) + left,
            (block, left) => Scarcity(block) + left,
            (block, left) => left,
            (block, left) => (10 * Scarcity(block)) + left,
            (block, left) => Scarcity(block) - block.Seconds,
            (block, left) => left + block.Seconds,
        ];
        foreach (var preference in preferences)
        {
            if (TryOne(blocks, gym, preference) is { } found)
            {
                return found;
            }
        }

        return null;
    }

    private static Timeline? TryOne(ImmutableArray<Block> blocks, Gym gym, Func<Block, int, double> preference)
    {
        List<Block> waiting = [.. blocks];
        var free = blocks
            .Select(b => b.AthleteId)
            .Distinct(StringComparer.Ordinal)
            .ToDictionary(id => id, _ => gym.Opens, StringComparer.Ordinal);
        List<(Block Block, int Start)> placed = [];
        int now = gym.Opens;
        while (waiting.Count > 0)
        {
            var low = waiting.Where(b => b.Phase == 0).Select(b => b.AthleteId).ToHashSet(StringComparer.Ordinal);
            var left = waiting
                .GroupBy(b => b.AthleteId, StringComparer.Ordinal)
                .ToDictionary(g => g.Key, g => g.Sum(b => b.Seconds + gym.ChangeOver), StringComparer.Ordinal);
            Block? next = waiting
                .Where(b =>
                    free[b.AthleteId] <= now
                    && (b.Phase == 0 || !low.Contains(b.AthleteId))
                    && Fits(placed, b, now + gym.ChangeOver, gym)
                )
                .OrderByDescending(b => preference(b, left[b.AthleteId]))
                .ThenBy(b => b.Name, StringComparer.Ordinal)
                .ThenBy(b => b.AthleteId, StringComparer.Ordinal)
                .FirstOrDefault();
            if (next is not null)
            {
                int start = now + gym.ChangeOver;
                if (start + next.Seconds > gym.Closes || (next.Phase == 1 && start > gym.FreshUntil))
                {
                    return null;
                }

                placed.Add((next, start));
                waiting.Remove(next);
                free[next.AthleteId] = start + next.Seconds;
                continue;
            }

            // Next moment at which something changes: somebody is free, or kit is (less the walk to it).
            int later = placed
                .SelectMany(p => new[] { p.Start + p.Block.Seconds, p.Start + p.Block.Seconds - gym.ChangeOver })
                .Where(t => t > now)
                .DefaultIfEmpty(int.MaxValue)
                .Min();
            if (later >= gym.Closes)
            {
                return null;
            }

            now = later;
        }

        return new([.. placed]);
    }

    /// <summary>True when the block's kit is free all the while from that second on.</summary>
    private static bool Fits(List<(Block Block, int Start)> placed, Block block, int start, Gym gym)
    {
        foreach (KitNeed need in block.Kit)
        {
            int inUse = placed
                .Where(p => p.Start < start + block.Seconds && start < p.Start + p.Block.Seconds)
                .SelectMany(p => p.Block.Kit)
                .Where(k => k.Id == need.Id)
                .Sum(k => k.Count);
            if (inUse + need.Count > gym.CountOf(need.Id))
            {
                return false;
            }
        }

        return true;
    }
}
