namespace Jumpwright.Exercises;

/// <summary>How much of an exercise is usual.</summary>
/// <param name="SetsMin">Fewest sets.</param>
/// <param name="SetsMax">Most sets.</param>
/// <param name="RepsMin">Fewest reps a set.</param>
/// <param name="RepsMax">Most reps a set.</param>
/// <param name="RestBetweenRepsS">Rest between reps, s; 0 for continuous series.</param>
/// <param name="RestBetweenSetsS">Rest between sets, s.</param>
/// <param name="SourceId">Where it comes from.</param>
public sealed record DoseRange(
    int SetsMin,
    int SetsMax,
    int RepsMin,
    int RepsMax,
    int RestBetweenRepsS,
    int RestBetweenSetsS,
    string SourceId
);
