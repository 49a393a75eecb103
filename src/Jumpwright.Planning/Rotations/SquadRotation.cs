using System.Collections.Immutable;
using Jumpwright.Plans;

namespace Jumpwright.Planning.Rotations;

/// <summary>Time lines for all sessions of a plan.</summary>
/// <param name="Timelines">For the sessions that have one.</param>
/// <param name="Impossible">Sessions whose items are proven not to fit, with the blocks that don't.</param>
/// <param name="Unknown">Sessions for which none was found and none excluded.</param>
internal sealed record SquadRotation(
    ImmutableDictionary<SessionSlot, Timeline> Timelines,
    ImmutableArray<(SessionSlot Slot, ImmutableArray<Block> Blocks)> Impossible,
    ImmutableArray<SessionSlot> Unknown
)
{
    public bool Complete => Impossible.IsEmpty && Unknown.IsEmpty;

    public static SquadRotation Of(PlanRequest request, ImmutableArray<Chosen> chosen, Asked asked)
    {
        var timelines = ImmutableDictionary.CreateBuilder<SessionSlot, Timeline>();
        var impossible = ImmutableArray.CreateBuilder<(SessionSlot, ImmutableArray<Block>)>();
        var unknown = ImmutableArray.CreateBuilder<SessionSlot>();
        foreach (SessionSlot slot in request.Slots)
        {
            ImmutableArray<Block> blocks = Blocks.Of(request, slot, chosen);
            if (blocks.IsEmpty || !asked.ForRotation(slot.Id))
            {
                continue;
            }

            Rotating.Result result = Rotating.Of(blocks, Gym.Of(request, slot));
            if (result.Timeline is { } timeline)
            {
                timelines[slot] = timeline;
            }
            else if (result.ProvenImpossible)
            {
                impossible.Add((slot, blocks));
            }
            else
            {
                unknown.Add(slot);
            }
        }

        return new(timelines.ToImmutable(), impossible.ToImmutable(), unknown.ToImmutable());
    }
}
