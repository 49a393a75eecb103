namespace Jumpwright.Quantities;

/// <summary>A limit named in a sentence.</summary>
/// <param name="Id">For example <c>contacts-per-week</c>.</param>
public readonly record struct SaidLimit(string Id)
{
    public override string ToString() => Id;
}
