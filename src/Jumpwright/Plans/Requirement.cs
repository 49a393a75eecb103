using Jumpwright.Quantities;

namespace Jumpwright.Plans;

/// <summary>A requirement that takes part in a collision. Kind: wish, limit or lock.</summary>
public sealed record Requirement(string Id, string Kind, Sentence Text);
