using System.Collections.Immutable;
using Jumpwright.Quantities;

namespace Jumpwright.Plans;

/// <summary>Something wished that the plan does not hold, and what forbids it.</summary>
public sealed record Unmet(string AthleteId, string Wanted, ImmutableArray<Sentence> Because);
