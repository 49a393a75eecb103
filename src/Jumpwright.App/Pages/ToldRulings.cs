using System.Collections.Immutable;
using Jumpwright.App.Wording;
using Jumpwright.Quantities;
using Jumpwright.Safety;

namespace Jumpwright.App.Pages;

/// <summary>Rulings of one reason, told together: how they all begin and end once, and between them what each forbids.</summary>
/// <param name="Source">Where they come from.</param>
/// <param name="IsEnglish">True where they stayed English on a page in another language.</param>
/// <param name="Opening">How all begin; empty for a ruling by itself.</param>
/// <param name="Each">What each says of its own; the whole sentence for a ruling by itself.</param>
/// <param name="Closing">How all end.</param>
public sealed record ToldRulings(
    Source Source,
    bool IsEnglish,
    string Opening,
    ImmutableArray<string> Each,
    string Closing
)
{
    /// <summary>So many words in common make two sentences one reason.</summary>
    private const int Alike = 4;

    /// <summary>All of them, in their order; no word of any is left out.</summary>
    public static ImmutableArray<ToldRulings> Of(ImmutableArray<Ruling> rulings) =>
        [
            .. rulings
                .DistinctBy(r => r.Because)
                .Select(r => (r.Source, Said: SpokenSentences.Of(r.Because)))
                .GroupBy(r => (r.Source, r.Said.IsEnglish, string.Join(' ', r.Said.Text.Split(' ').Take(Alike))))
                .Select(g => Told(g.Key.Source, g.Key.IsEnglish, [.. g.Select(r => r.Said.Text.Split(' '))])),
        ];

    private static ToldRulings Told(Source source, bool isEnglish, string[][] sentences)
    {
        if (sentences.Length == 1)
        {
            return new(source, isEnglish, "", [string.Join(' ', sentences[0])], "");
        }

        // Each keeps at least one word of its own.
        int shortest = sentences.Min(s => s.Length) - 1;
        int opening = Common(sentences, shortest, (s, i) => s[i]);
        int closing = Common(sentences, shortest - opening, (s, i) => s[^(i + 1)]);
        return new(
            source,
            isEnglish,
            string.Join(' ', sentences[0].Take(opening)),
            [.. sentences.Select(s => string.Join(' ', s[opening..(s.Length - closing)]))],
            string.Join(' ', sentences[0].TakeLast(closing))
        );
    }

    private static int Common(string[][] sentences, int most, Func<string[], int, string> word)
    {
        int alike = 0;
        while (alike < most && sentences.All(s => word(s, alike) == word(sentences[0], alike)))
        {
            alike++;
        }

        return alike;
    }
}
