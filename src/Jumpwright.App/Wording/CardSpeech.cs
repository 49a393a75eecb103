using System.Collections.Frozen;
using Jumpwright.Sessions;
using static Jumpwright.App.Wording.TextBook;

namespace Jumpwright.App.Wording;

/// <summary>
/// What a card says word for word, whoever it is for (its questions, the landing lines, when everything stops), in the language of the
/// request. The core says it in English; the text book knows it by that, and what it doesn't know stays English and says so.
/// </summary>
internal static class CardSpeech
{
    private const string Known = "card.says.";

    private static readonly Lazy<FrozenDictionary<string, string>> Keys = new(() =>
        TextBook
            .Keys("en")
            .Where(k => k.StartsWith(Known, StringComparison.Ordinal))
            .ToFrozenDictionary(k => TextBook.Of("en", k)!, k => k, StringComparer.Ordinal)
    );

    /// <summary>The sentence in the language of the request.</summary>
    public static Piece Of(string english) =>
        Keys.Value.TryGetValue(english, out string? key) ? new(T[key]) : new(english, IsEnglish: true);

    /// <summary>All that a card says word for word.</summary>
    public static IEnumerable<string> Fixed(SessionCard card) =>
        card
            .Questions.SelectMany(q =>
                q.Blanks.Append(q.Question).Concat(q.Answers.SelectMany(a => new[] { a.Answer, a.Then }))
            )
            .Concat(card.LandingLines)
            .Append(card.StopAtOnce)
            .Append(card.Caution);
}
