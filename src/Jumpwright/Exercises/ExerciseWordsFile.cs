using System.Collections.Immutable;

namespace Jumpwright.Exercises;

/// <summary>The shape of a file with one exercise's words in another language; its name is the exercise's id.</summary>
internal sealed record ExerciseWordsFile
{
    public required string Name { get; init; }
    public required string Purpose { get; init; }
    public required string SetUp { get; init; }
    public required ImmutableArray<string> Cues { get; init; }
    public required ImmutableArray<ExerciseFile.FaultPart> Faults { get; init; }
    public required string Progress { get; init; }
    public required string StopRule { get; init; }
    public required ImmutableArray<string> Cautions { get; init; }

    internal ExerciseWords ToWords(string language) =>
        new(
            language,
            Name,
            Purpose,
            SetUp,
            Cues,
            [.. Faults.Select(f => new Fault(f.Seen, f.Mend))],
            Progress,
            StopRule,
            Cautions
        );
}
