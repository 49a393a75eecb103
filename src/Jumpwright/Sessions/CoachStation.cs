using System.Collections.Immutable;
using Jumpwright.Quantities;

namespace Jumpwright.Sessions;

/// <summary>One station's line on the time axis.</summary>
public sealed record CoachStation(
    Sentence Station,
    Sentence Exercise,
    double StartMin,
    double EndMin,
    ImmutableArray<string> AthleteNames
)
{
    /// <summary>Until this minute the first set is an easy one; null where none is.</summary>
    public double? EasyUntilMin { get; init; }

    /// <summary>What is set up for each of them, in the order of <see cref="AthleteNames"/>: the box's height, the drop, the load; null where nothing is.</summary>
    public ImmutableArray<Sentence?> Settings { get; init; } = [];
}
