using System.Collections.Immutable;

namespace Jumpwright.Plans;

/// <summary>Who is at which station when, minutes from the session's start.</summary>
public sealed record RotationEntry(
    string Station,
    string ExerciseId,
    double StartMin,
    double EndMin,
    ImmutableArray<string> AthleteIds
)
{
    /// <summary>Until this minute the first set is an easy one (<see cref="Dosing.Dose.EasySets"/>); null where none is.</summary>
    public double? EasyUntilMin { get; init; }
}
