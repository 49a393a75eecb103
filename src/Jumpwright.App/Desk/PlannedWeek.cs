using System.Collections.Immutable;
using Jumpwright.Plans;
using Jumpwright.Quantities;
using Jumpwright.Sessions;
using NodaTime;

namespace Jumpwright.App.Desk;

/// <summary>A plan with what was asked and what is printed from it.</summary>
public sealed record PlannedWeek(
    PlanRequest Request,
    Plan Plan,
    ImmutableArray<SessionCard> Cards,
    ImmutableArray<CoachSheet> Sheets
)
{
    /// <summary>When its limits were checked; what was written later was not looked at. Null where nobody wrote it down.</summary>
    public Instant? CheckedAt { get; init; }

    /// <summary>What is otherwise than in the plan before; null when there was none.</summary>
    public ImmutableArray<PlanChange>? Changes { get; init; }
}
