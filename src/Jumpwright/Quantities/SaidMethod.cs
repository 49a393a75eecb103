namespace Jumpwright.Quantities;

/// <summary>How a value was got, named in a sentence.</summary>
/// <param name="Name">As files have it, for example <c>impulse-momentum</c>.</param>
public readonly record struct SaidMethod(string Name)
{
    public override string ToString() => Name;
}
