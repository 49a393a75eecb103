using System.Collections.Immutable;
using Jumpwright.Plans;

namespace Jumpwright.Planning.Rotations;

/// <summary>A session's time line: by greedy placing where that fits, else by the scheduling model.</summary>
internal static class Rotating
{
    /// <summary>What came out for one session.</summary>
    /// <param name="Timeline">The time line, or null.</param>
    /// <param name="ProvenImpossible">True when it is proven that there is none.</param>
    public sealed record Result(Timeline? Timeline, bool ProvenImpossible);

    public static Result Of(ImmutableArray<Block> blocks, Gym gym, double deterministicTime = 1)
    {
        if (GreedyRotation.Try(blocks, gym) is { } greedy)
        {
            return new(greedy, false);
        }

        Timeline? found = RotationModel.Solve(blocks, gym, deterministicTime, out bool proven);
        return new(found, proven);
    }

    /// <summary>
    /// A smaller set of blocks that still has no time line: athletes are left out one at a time while that stays proven.
    /// </summary>
    public static ImmutableArray<Block> Shrink(ImmutableArray<Block> blocks, Gym gym)
    {
        foreach (string id in blocks.Select(b => b.AthleteId).Distinct(StringComparer.Ordinal).ToList())
        {
            ImmutableArray<Block> fewer = [.. blocks.Where(b => b.AthleteId != id)];
            if (!fewer.IsEmpty && Of(fewer, gym, 0.1) is { Timeline: null, ProvenImpossible: true })
            {
                blocks = fewer;
            }
        }

        return blocks;
    }

    /// <summary>The session's slot and kit as a rotation sees them.</summary>
    public static Gym GymOf(PlanRequest request, SessionSlot slot) => Gym.Of(request, slot);
}
