using System.Collections.Immutable;
using Jumpwright.Calculators;
using Jumpwright.Quantities;
using static Jumpwright.App.Wording.TextBook;

namespace Jumpwright.App.Kit;

/// <summary>One calculator as a page: its fields, and what it makes of them.</summary>
/// <param name="Id">In the address.</param>
/// <param name="Basis">Formula, sources, dispute.</param>
/// <param name="Fields">What is asked.</param>
/// <param name="Answer">From what was typed to what is shown, or a sentence why not.</param>
public sealed record KitTool(
    string Id,
    Basis Basis,
    ImmutableArray<KitField> Fields,
    Func<KitTyped, Outcome<KitAnswer>> Answer
)
{
    /// <summary>On the page.</summary>
    public string Name => T[$"kit.{Id}"];

    /// <summary>A field's own word, or the one that fields of that name share.</summary>
    public string LabelOf(KitField field) => Find($"kit.{Id}.{field.Name}") ?? T[$"kit.field.{field.Name}"];
}
