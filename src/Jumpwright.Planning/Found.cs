using System.Collections.Immutable;
using Jumpwright.Planning.Rotations;
using Jumpwright.Plans;

namespace Jumpwright.Planning;

/// <summary>What a search ended with.</summary>
/// <param name="Status">How it ended.</param>
/// <param name="Objective">Points of the plan.</param>
/// <param name="Bound">Proven: no plan that keeps all limits has more.</param>
/// <param name="Chosen">The plan's items.</param>
/// <param name="Timelines">A time line for each session that holds any.</param>
internal sealed record Found(
    PlanStatus Status,
    long? Objective,
    long? Bound,
    ImmutableArray<Chosen> Chosen,
    ImmutableDictionary<SessionSlot, Timeline> Timelines
)
{
    public static Found Nothing(PlanStatus status) =>
        new(status, null, null, [], ImmutableDictionary<SessionSlot, Timeline>.Empty);
}
