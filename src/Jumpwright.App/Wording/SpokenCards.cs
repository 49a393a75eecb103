using System.Collections.Immutable;
using Jumpwright.App.Desk;
using Jumpwright.Exercises;
using Jumpwright.Paper;
using Jumpwright.Sessions;

namespace Jumpwright.App.Wording;

/// <summary>
/// Cards as they are printed, in the language and units of the request: what the core gives as words (the questions, the landing lines,
/// exercises) is said in it here, and its sentences are written out in it by the paper.
/// </summary>
internal static class SpokenCards
{
    /// <summary>The card as a PDF.</summary>
    public static byte[] Pdf(SessionCard card, Catalogue catalogue, PictureBook pictures, CardPaper paper) =>
        CardPdf.Render(Of(card, catalogue), pictures.Of(card.AthleteId, card.Date), paper, SpokenSentences.Writer);

    /// <summary>The card with its fixed words and its exercises in the language of the request.</summary>
    public static SessionCard Of(SessionCard card, Catalogue catalogue) =>
        card with
        {
            Questions =
            [
                .. card.Questions.Select(q => new CardQuestion(
                    Say(q.Question),
                    [.. q.Blanks.Select(Say)],
                    [.. q.Answers.Select(a => new CardAnswer(Say(a.Answer), Say(a.Then)))]
                )),
            ],
            Items = [.. card.Items.Select(item => Of(item, catalogue))],
            LandingLines = [.. card.LandingLines.Select(Say)],
            StopAtOnce = Say(card.StopAtOnce),
            Caution = Say(card.Caution),
        };

    private static CardItem Of(CardItem item, Catalogue catalogue)
    {
        (_, string name, string setUp, string cue) = SpokenExercises.OnCard(catalogue, item);
        return item with { Name = name, SetUp = setUp, Cue = cue };
    }

    private static string Say(string english) => CardSpeech.Of(english).Text;
}
