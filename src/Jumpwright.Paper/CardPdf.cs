using Jumpwright.Paper.Layout;
using Jumpwright.Quantities;
using Jumpwright.Sessions;

namespace Jumpwright.Paper;

/// <summary>A session card as a PDF. The same card gives the same bytes.</summary>
public static class CardPdf
{
    /// <summary>Draws the card; what does not fit on one page goes on to the next, under the same head.</summary>
    /// <param name="card">What is told.</param>
    /// <param name="pictures">Its pictures.</param>
    /// <param name="paper">Sheet.</param>
    /// <param name="writer">In which language and units; English and metric when null.</param>
    public static byte[] Render(
        SessionCard card,
        CardPictures? pictures = null,
        CardPaper paper = CardPaper.A5,
        SentenceWriter? writer = null
    )
    {
        ArgumentNullException.ThrowIfNull(card);
        var format = PaperFormat.Of(paper);
        var words = new PaperWords(writer ?? SentenceWriter.English);
        var layout = new CardLayout(card, pictures ?? CardPictures.None, new CardStyles(), format.Content.Width, words);
        return PageBinder.Bind(
            format,
            layout.FirstHead(),
            layout.FurtherHead(),
            layout.Foot,
            layout.Blocks(),
            layout.Title,
            card.Date,
            words.Language
        );
    }
}
