using System.Collections.Frozen;
using System.Text.Json;
using Jumpwright.Quantities;

namespace Jumpwright.Exercises;

/// <summary>The words of exercises by language. Only what ships is translated, and only as long as it says what was translated.</summary>
public static class Wordings
{
    private const string Folder = "Jumpwright.Exercises.Words.";
    private const string Ending = ".json";

    private static readonly FrozenDictionary<string, Lazy<FrozenDictionary<string, ExerciseWords>>> Translated = new[]
    {
        "de",
    }.ToFrozenDictionary(
        l => l,
        l => new Lazy<FrozenDictionary<string, ExerciseWords>>(() => Read(l)),
        StringComparer.Ordinal
    );

    /// <summary>
    /// The exercise's words in that language; its own where the language is <c>en</c> or one we have no words in, and where
    /// any of its words is not the shipped one: what a coach wrote is never replaced by a translation of something else.
    /// </summary>
    public static ExerciseWords Of(Exercise exercise, string language)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        return
            Translated.TryGetValue(language, out Lazy<FrozenDictionary<string, ExerciseWords>>? all)
            && Catalogue.Standard.Find(exercise.Id) is { } shipped
            && SaysTheSame(exercise, shipped)
            && all.Value.TryGetValue(exercise.Id, out ExerciseWords? words)
            ? words
            : Own(exercise);
    }

    /// <summary>Whether it says what ships, word for word.</summary>
    public static bool Ships(Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        return Catalogue.Standard.Find(exercise.Id) is { } shipped && SaysTheSame(exercise, shipped);
    }

    private static ExerciseWords Own(Exercise e) =>
        new("en", e.Name, e.Purpose, e.SetUp, e.Cues, e.Faults, e.Progress, e.StopRule, e.Cautions);

    private static bool SaysTheSame(Exercise one, Exercise other) =>
        ReferenceEquals(one, other)
        || (
            one.Name == other.Name
            && one.Purpose == other.Purpose
            && one.SetUp == other.SetUp
            && one.Progress == other.Progress
            && one.StopRule == other.StopRule
            && one.Cues.SequenceEqual(other.Cues)
            && one.Faults.SequenceEqual(other.Faults)
            && one.Cautions.SequenceEqual(other.Cautions)
        );

    private static FrozenDictionary<string, ExerciseWords> Read(string language)
    {
        string beginning = Folder + language + ".";
        return Embedded
            .Names(beginning, Ending)
            .ToFrozenDictionary(
                n => n[beginning.Length..^Ending.Length],
                n =>
                    (
                        JsonSerializer.Deserialize(Embedded.Text(n), ExerciseShapes.Words)
                        ?? throw new JsonException($"{n} says null.")
                    ).ToWords(language),
                StringComparer.Ordinal
            );
    }
}
