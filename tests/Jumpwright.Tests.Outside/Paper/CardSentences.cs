using Jumpwright.Quantities;
using Jumpwright.Sessions;

namespace Jumpwright.Tests.Outside.Paper;

/// <summary>What stands on a card whoever it is for.</summary>
internal static class CardSentences
{
    /// <summary>Its questions with blanks and answers, the landing lines, when everything stops, the caution.</summary>
    public static IEnumerable<Sentence> OnEvery(this SessionCard card) =>
        card
            .Questions.SelectMany(q =>
                q.Blanks.Append(q.Question).Concat(q.Answers.SelectMany(a => new[] { a.Answer, a.Then }))
            )
            .Concat(card.LandingLines)
            .Append(card.StopAtOnce)
            .Append(card.Caution);
}
