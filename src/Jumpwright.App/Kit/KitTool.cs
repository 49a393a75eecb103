using System.Collections.Immutable;
using Jumpwright.Calculators;
using Jumpwright.Quantities;

namespace Jumpwright.App.Kit;

/// <summary>One calculator as a page: its fields, and what it makes of them.</summary>
/// <param name="Id">In the address.</param>
/// <param name="Name">On the page.</param>
/// <param name="Basis">Formula, sources, dispute.</param>
/// <param name="Fields">What is asked.</param>
/// <param name="Answer">From what was typed to what is shown, or a sentence why not.</param>
public sealed record KitTool(
    string Id,
    string Name,
    Basis Basis,
    ImmutableArray<KitField> Fields,
    Func<KitTyped, Outcome<KitAnswer>> Answer
);
