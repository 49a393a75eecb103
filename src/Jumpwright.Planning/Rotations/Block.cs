using System.Collections.Immutable;
using Jumpwright.Exercises;

namespace Jumpwright.Planning.Rotations;

/// <summary>What one athlete does at a stretch: one item, or the two of a contrast pair in turn.</summary>
/// <param name="AthleteId">Who.</param>
/// <param name="Name">Exercise id, or the pair's id: decides between equals.</param>
/// <param name="Phase">0 low work, 1 fresh, 2 the rest.</param>
/// <param name="Rank">Order inside the low work, 0 or 1; 2 all other work.</param>
/// <param name="Seconds">How long it takes.</param>
/// <param name="Kit">Kit it holds all the while.</param>
/// <param name="Turns">What is done from which second to which within the block.</param>
internal sealed record Block(
    string AthleteId,
    string Name,
    int Phase,
    int Rank,
    int Seconds,
    ImmutableArray<KitNeed> Kit,
    ImmutableArray<(string ExerciseId, int From, int Until)> Turns
)
{
    /// <summary>One waiting block of its rank, as a part of a count of low blocks by rank; nothing for other work.</summary>
    public int AsWaiting => Rank < 2 ? 1 << (8 * Rank) : 0;

    /// <summary>Whether lower work waits in such a count.</summary>
    public bool ComesAfter(int waiting) => (waiting & ((1 << (8 * Rank)) - 1)) != 0;
}
