namespace Jumpwright.Quantities;

/// <summary>A measure named in a sentence.</summary>
/// <param name="Name">As files have it, for example <c>jump_height_m</c>.</param>
/// <param name="English">How the English sentence names it.</param>
public readonly record struct SaidMeasure(string Name, string English)
{
    public override string ToString() => English;
}
