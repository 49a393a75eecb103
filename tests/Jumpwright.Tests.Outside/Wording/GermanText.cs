using Jumpwright.App.Wording;
using Jumpwright.Exercises;

namespace Jumpwright.Tests.Outside.Wording;

/// <summary>All that is written in German: the text book, sentences of the core with their gaps, and what the catalogue says of each exercise.</summary>
internal static class GermanText
{
    internal static IEnumerable<string> All { get; } =
    [
        .. TextBook.Keys("de").Select(k => TextBook.Of("de", k)!),
        .. SpokenSentences.Templates("de").Select(t => SpokenSentences.TemplateIn("de", t)!),
        .. Catalogue.Standard.Exercises.SelectMany(Of),
    ];

    private static IEnumerable<string> Of(Exercise exercise)
    {
        ExerciseWords words = Wordings.Of(exercise, "de");
        return
        [
            words.Name,
            words.Purpose,
            words.SetUp,
            words.Progress,
            words.StopRule,
            .. words.Cues,
            .. words.Cautions,
            .. words.Faults.SelectMany(f => new[] { f.Seen, f.Fix }),
        ];
    }
}
