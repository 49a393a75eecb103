namespace Jumpwright.Quantities;

/// <summary>A role named in a sentence; one that a language has no word for stands as it was written.</summary>
/// <param name="Written">What stands in the entry, for example <c>physiotherapist</c>.</param>
public readonly record struct SaidRole(string Written)
{
    public override string ToString() => Written;
}
