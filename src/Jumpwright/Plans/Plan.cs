using System.Collections.Immutable;
using Jumpwright.Quantities;

namespace Jumpwright.Plans;

/// <summary>A plan with its proof: objective, bound, and what each limit was stretched to.</summary>
public sealed record Plan(
    PlanStatus Status,
    double? Objective,
    double? BestBound,
    double ObjectiveEmpty,
    double? Gap,
    double Seconds,
    ImmutableArray<PlannedSession> Sessions,
    ImmutableArray<Unmet> Unmet,
    ImmutableArray<Collision> Collisions,
    ImmutableArray<Override> Overrides,
    ImmutableArray<LimitReading> Limits
)
{
    /// <summary>What was asked of limits and does not hold, and how other jumping was counted, in sentences.</summary>
    public ImmutableArray<Sentence> Remarks { get; init; } = [];
}
