namespace Jumpwright.Quantities;

/// <summary>Kit named in a sentence.</summary>
/// <param name="Id">For example <c>plyo-box</c>.</param>
public readonly record struct SaidKit(string Id)
{
    public override string ToString() => Id.Replace('-', ' ');
}
