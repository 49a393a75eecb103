using System.Collections.Immutable;

namespace Jumpwright.Plans;

/// <summary>A plan made anew from an earlier one.</summary>
/// <param name="Plan">The new plan; its objective also counts what stayed as it was.</param>
/// <param name="Request">What was asked, with what it was worth that items stay, and the caps on sore tissues.</param>
/// <param name="Changes">Everything that is otherwise, in time order.</param>
public sealed record Replanned(Plan Plan, PlanRequest Request, ImmutableArray<PlanChange> Changes);
