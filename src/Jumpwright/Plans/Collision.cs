using System.Collections.Immutable;
using Jumpwright.Dosing;

namespace Jumpwright.Plans;

/// <summary>A set of requirements that can't be met together, while every proper subset can.</summary>
public sealed record Collision(ImmutableArray<Requirement> Requirements);
