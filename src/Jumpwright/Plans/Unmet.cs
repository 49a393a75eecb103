using System.Collections.Immutable;

namespace Jumpwright.Plans;

/// <summary>Something wished that the plan does not hold, and what forbids it.</summary>
public sealed record Unmet(string AthleteId, string Wanted, ImmutableArray<string> Because);
