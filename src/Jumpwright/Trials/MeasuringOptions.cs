using System.Collections.Immutable;

namespace Jumpwright.Trials;

/// <summary>What may be set for measuring. The defaults are the house's; each says why.</summary>
public sealed record MeasuringOptions
{
    public static readonly MeasuringOptions Default = new();

    /// <summary>
    /// Events set by a person; none by default. Those given replace what was found, the rest is found as ever, and every
    /// measure follows. Standing jumps and drop jumps take them.
    /// </summary>
    public ImmutableArray<EventCorrection> Corrections { get; init; } = [];
}
