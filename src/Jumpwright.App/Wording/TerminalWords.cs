using Jumpwright.Exercises;
using Jumpwright.Plans;
using Jumpwright.Quantities;
using Jumpwright.Safety;

namespace Jumpwright.App.Wording;

/// <summary>What a command prints for people: English, with exercises, limits and sessions named as the pages name them. Files and JSON keep ids.</summary>
internal static class TerminalWords
{
    /// <summary>Names exercises by that catalogue, a squad's own among them, for the rest of the command.</summary>
    public static void Use(Catalogue catalogue) => Speech.Use(Speech.Standard with { Catalogue = catalogue });

    public static string Of(Sentence sentence) => SpokenSentences.Text(sentence);

    /// <summary>Several as one line; a sentence that stands in the middle of it loses its stop.</summary>
    public static string Of(IEnumerable<Sentence> sentences) =>
        string.Join("; ", sentences.Select(s => Of(s).TrimEnd('.'))) + ".";

    public static string Exercise(string id) => Speech.Now.Catalogue.Find(id)?.Name ?? id;

    public static string Limit(string id) => Of($"{LimitNames.Of(id):capital}");

    /// <summary>What was wished: an exercise, or any at all.</summary>
    public static string Wanted(Unmet unmet) =>
        Speech.Now.Catalogue.Find(unmet.Wanted) is { } exercise ? exercise.Name : TextBook.T["left-out.any"];
}
