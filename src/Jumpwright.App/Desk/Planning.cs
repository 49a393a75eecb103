using Jumpwright.Quantities;

namespace Jumpwright.App.Desk;

/// <summary>A search for a plan that is under way.</summary>
/// <param name="Says">What the planner last said of itself.</param>
public sealed record Planning(Sentence Says);
