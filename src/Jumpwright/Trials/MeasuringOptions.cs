namespace Jumpwright.Trials;

/// <summary>What may be set for measuring. The defaults are the house's; each says why.</summary>
public sealed record MeasuringOptions
{
    public static readonly MeasuringOptions Default = new();
}
