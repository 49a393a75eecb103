using System.Collections.Immutable;

namespace Jumpwright.Plans;

/// <summary>Who is at which station when, minutes from the session's start.</summary>
public sealed record RotationEntry(
    string Station,
    string ExerciseId,
    double StartMin,
    double EndMin,
    ImmutableArray<string> AthleteIds
);
