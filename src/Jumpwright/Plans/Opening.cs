namespace Jumpwright.Plans;

/// <summary>
/// A step that is closed today and opens once another exercise was done often enough: planned ahead, and done only if those
/// sessions were clean.
/// </summary>
/// <param name="ExerciseId">What comes first.</param>
/// <param name="Sessions">In how many sessions before.</param>
public sealed record Opening(string ExerciseId, int Sessions);
