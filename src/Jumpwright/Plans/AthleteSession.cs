using System.Collections.Immutable;

namespace Jumpwright.Plans;

/// <summary>What one athlete does in one session, in the order it is done.</summary>
public sealed record AthleteSession(string AthleteId, ImmutableArray<PlannedItem> Items);
