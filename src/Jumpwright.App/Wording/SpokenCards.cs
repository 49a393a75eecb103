using System.Collections.Immutable;
using Jumpwright.App.Desk;
using Jumpwright.Exercises;
using Jumpwright.Paper;
using Jumpwright.Sessions;

namespace Jumpwright.App.Wording;

/// <summary>
/// Cards as they are printed, in the language and units of the request: what the core gives as words (exercises) is said in it here, and
/// its sentences are written out in it by the paper.
/// </summary>
internal static class SpokenCards
{
    /// <summary>The card as a PDF.</summary>
    public static byte[] Pdf(SessionCard card, Catalogue catalogue, PictureBook pictures, CardPaper paper) =>
        CardPdf.Render(Of(card, catalogue), pictures.Of(card.AthleteId, card.Date), paper, SpokenSentences.Writer);

    /// <summary>The card with its exercises in the language of the request.</summary>
    public static SessionCard Of(SessionCard card, Catalogue catalogue) =>
        card with
        {
            Items = [.. card.Items.Select(item => Of(item, catalogue))],
        };

    private static CardItem Of(CardItem item, Catalogue catalogue)
    {
        (_, string name, string setUp, string cue, string stop) = SpokenExercises.OnCard(catalogue, item);
        return item with { Name = name, SetUp = setUp, Cue = cue, OwnStop = stop };
    }
}
