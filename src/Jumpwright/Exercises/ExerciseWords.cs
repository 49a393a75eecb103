using System.Collections.Immutable;

namespace Jumpwright.Exercises;

/// <summary>What an exercise says to people, in one language. Its numbers, tiers, criteria and ids are said nowhere but in the exercise.</summary>
/// <param name="Language"><c>en</c> for the exercise's own words, whoever wrote them; else what they were translated to.</param>
/// <param name="Name">As other exercises' words call it too.</param>
/// <param name="Purpose">What it is for.</param>
/// <param name="SetUp">How it is done.</param>
/// <param name="Cues">As many as the exercise has, in its order.</param>
/// <param name="Faults">As many as the exercise has, in its order.</param>
/// <param name="Progress">What to watch or measure to see that it gets better.</param>
/// <param name="StopRule">When to stop: no softer and no stricter than the exercise says.</param>
/// <param name="Cautions">As many as the exercise has, in its order.</param>
public sealed record ExerciseWords(
    string Language,
    string Name,
    string Purpose,
    string SetUp,
    ImmutableArray<string> Cues,
    ImmutableArray<Fault> Faults,
    string Progress,
    string StopRule,
    ImmutableArray<string> Cautions
);
