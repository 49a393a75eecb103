namespace Jumpwright.Quantities;

/// <summary>A unit that is a word of its own in other languages, such as contacts or days.</summary>
/// <param name="Symbol">As files have it.</param>
public readonly record struct UnitName(string Symbol)
{
    public override string ToString() => Symbol;
}
