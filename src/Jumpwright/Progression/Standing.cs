using System.Collections.Immutable;
using Jumpwright.Quantities;

namespace Jumpwright.Progression;

/// <summary>Whether an exercise or a test is open to one athlete on one day.</summary>
/// <param name="Closings">All that closes it, rulings first; none where it is open.</param>
public sealed record Standing(ImmutableArray<Closing> Closings)
{
    /// <summary>Nothing closes it.</summary>
    public bool IsOpen => Closings.IsEmpty;

    /// <summary>What speaks first; null where it is open.</summary>
    public Closing? First => IsOpen ? null : Closings[0];

    /// <summary>The jump that an open test is done with, where its own words leave open which; else null.</summary>
    public SaidExercise? With { get; init; }
}
