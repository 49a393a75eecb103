using Jumpwright.Quantities;

namespace Jumpwright.Calculators.Bands;

/// <summary>At which side of the athlete a band pulls.</summary>
/// <param name="Id">In ids of checks.</param>
/// <param name="Said">In sentences.</param>
internal sealed record BandPlace(string Id, Sentence Said)
{
    public static readonly BandPlace Left = new("left", $"left");
    public static readonly BandPlace Right = new("right", $"right");
}
