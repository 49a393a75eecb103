using Jumpwright.Exercises;
using Jumpwright.Quantities;
using Jumpwright.Sessions;

namespace Jumpwright.App.Wording;

/// <summary>Exercises in the language of the request, where they have words in it; else in their own, and marked as such.</summary>
internal static class SpokenExercises
{
    private const string Own = "en";

    /// <summary>Everything an exercise says; lengths in what ships are in the reader's unit, what a squad wrote stays as it is.</summary>
    public static ExerciseWords Of(Exercise exercise)
    {
        ExerciseWords words = Wordings.Of(exercise, Speech.Now.Language);
        return Speech.Now.Units == UnitSystem.Metric || !Wordings.Ships(exercise)
            ? words
            : words with
            {
                SetUp = ReadersUnits.In(words.SetUp),
                Cues = [.. words.Cues.Select(ReadersUnits.In)],
                Faults = [.. words.Faults.Select(f => new Fault(ReadersUnits.In(f.Seen), ReadersUnits.In(f.Fix)))],
                Progress = ReadersUnits.In(words.Progress),
                StopRule = ReadersUnits.In(words.StopRule),
                Cautions = [.. words.Cautions.Select(ReadersUnits.In)],
            };
    }

    /// <summary>Its name; the id where the catalogue doesn't know it.</summary>
    public static string Name(Catalogue catalogue, string id) =>
        catalogue.Find(id) is { } exercise ? Of(exercise).Name : id;

    /// <summary>Its name, marked where it is not in the page's language.</summary>
    public static Piece Named(Catalogue catalogue, string id) =>
        new(Name(catalogue, id), Language(catalogue, id) != Speech.Now.Language);

    /// <summary>The language its name stands in.</summary>
    public static string Language(Catalogue catalogue, string id) =>
        catalogue.Find(id) is { } exercise ? Of(exercise).Language : Own;

    /// <summary>The name within a sentence: small in English, and as it is where nouns have capitals.</summary>
    public static string WithinSentence(Catalogue catalogue, string id) =>
        Language(catalogue, id) == Own ? Name(catalogue, id).ToLowerInvariant() : Name(catalogue, id);

    /// <summary>How much of it, how high or heavy, as one sentence.</summary>
    public static Sentence Dose(CardItem item) =>
        item.HeightOrLoad is { } height ? Sentence.Of($"{item.Dose}, {height}") : item.Dose;

    /// <summary>A card's item as far as the exercise itself says it: name, set-up, the cue and what ends it.</summary>
    public static (string Language, string Name, string SetUp, string Cue, string Stop) OnCard(
        Catalogue catalogue,
        CardItem item
    ) =>
        catalogue.Find(item.ExerciseId) is { } exercise
        && Of(exercise) is var words
        && (words.Language != Own || words.Name == item.Name)
            ? (
                words.Language,
                words.Name,
                Cards.SetUp(words.SetUp),
                words.Cues[0],
                item.OwnStop.Length == 0 ? "" : words.StopRule
            )
            : (Own, item.Name, item.SetUp, item.Cue, item.OwnStop);
}
