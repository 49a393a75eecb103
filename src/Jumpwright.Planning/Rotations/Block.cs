using System.Collections.Immutable;
using Jumpwright.Exercises;

namespace Jumpwright.Planning.Rotations;

/// <summary>What one athlete does at a stretch: one item, or the two of a contrast pair in turn.</summary>
/// <param name="AthleteId">Who.</param>
/// <param name="Name">Exercise id, or the pair's id: decides between equals.</param>
/// <param name="Phase">0 low work, 1 fresh, 2 the rest.</param>
/// <param name="Seconds">How long it takes.</param>
/// <param name="Kit">Kit it holds all the while.</param>
/// <param name="Turns">What is done from which second to which within the block.</param>
internal sealed record Block(
    string AthleteId,
    string Name,
    int Phase,
    int Seconds,
    ImmutableArray<KitNeed> Kit,
    ImmutableArray<(string ExerciseId, int From, int Until)> Turns
);
