using System.Collections.Immutable;
using Jumpwright.Plans;

namespace Jumpwright.Planning.Rotations;

/// <summary>Where the items of an earlier plan stand, read back from its rotations.</summary>
internal static class Standing
{
    /// <summary>
    /// A time line for every session: as it was where that still holds, else made anew. Null when a session has none that
    /// holds all of them.
    /// </summary>
    /// <param name="previous">The earlier plan.</param>
    /// <param name="request">What is asked now.</param>
    /// <param name="items">The items that stay.</param>
    public static ImmutableDictionary<SessionSlot, Timeline>? Of(
        Plan previous,
        PlanRequest request,
        ImmutableArray<Chosen> items
    )
    {
        var timelines = ImmutableDictionary.CreateBuilder<SessionSlot, Timeline>();
        foreach (SessionSlot slot in request.Slots)
        {
            ImmutableArray<Block> blocks = Blocks.Of(request, slot, items);
            Gym gym = Gym.Of(request, slot);
            PlannedSession? before = previous.Sessions.FirstOrDefault(s => s.Slot.Id == slot.Id);
            Timeline? timeline = before is null ? null : AsItWas(before, blocks, gym);
            timeline ??= GreedyRotation.Try(blocks, gym);
            if (timeline is null)
            {
                return null;
            }

            timelines[slot] = timeline;
        }

        return timelines.ToImmutable();
    }

    /// <summary>Every block where it stood; null when one is not found there, or stands outside what the gym now allows.</summary>
    private static Timeline? AsItWas(PlannedSession session, ImmutableArray<Block> blocks, Gym gym)
    {
        var placed = ImmutableArray.CreateBuilder<(Block, int)>();
        foreach (Block block in blocks)
        {
            var first = session
                .Rotation.Where(r =>
                    r.ExerciseId == block.Turns[0].ExerciseId && r.AthleteIds.Contains(block.AthleteId)
                )
                .OrderBy(r => r.StartMin)
                .FirstOrDefault();
            int turn = block.Turns[0].Until - block.Turns[0].From;
            if (first is null || Math.Abs((60 * (first.EndMin - first.StartMin)) - turn) > 0.5)
            {
                return null;
            }

            int start = (int)Math.Round(60 * first.StartMin);
            if (
                start < gym.Opens + gym.ChangeOver
                || start + block.Seconds > gym.Closes
                || (block.Phase == 1 && start > gym.FreshUntil)
            )
            {
                return null;
            }

            placed.Add((block, start));
        }

        Timeline timeline = new(placed.ToImmutable());
        return InOrder(timeline) && InUseAtMost(timeline, gym) ? timeline : null;
    }

    private static bool InOrder(Timeline timeline) =>
        timeline
            .Placed.GroupBy(p => p.Block.AthleteId, StringComparer.Ordinal)
            .All(one =>
                one.OrderBy(p => p.Start).Select(p => p.Block.Rank) is var ranks && ranks.SequenceEqual(ranks.Order())
            );

    private static bool InUseAtMost(Timeline timeline, Gym gym)
    {
        foreach ((Block at, int start) in timeline.Placed)
        {
            foreach (var need in at.Kit)
            {
                int inUse = timeline
                    .Placed.Where(p => p.Start <= start && p.Start + p.Block.Seconds > start)
                    .Sum(p => p.Block.Kit.Where(k => k.Id == need.Id).Sum(k => k.Count));
                if (inUse > gym.CountOf(need.Id))
                {
                    return false;
                }
            }
        }

        return true;
    }
}
