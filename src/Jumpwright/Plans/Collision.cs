using System.Collections.Immutable;

namespace Jumpwright.Plans;

/// <summary>A set of requirements that can't be met together, while every proper subset can.</summary>
public sealed record Collision(ImmutableArray<Requirement> Requirements);
