using Jumpwright.Paper.Layout;
using Jumpwright.Sessions;

namespace Jumpwright.Paper;

/// <summary>A session card as a PDF. The same card gives the same bytes.</summary>
public static class CardPdf
{
    /// <summary>Draws the card; what does not fit on one page goes on to the next, under the same head.</summary>
    public static byte[] Render(SessionCard card, CardPictures? pictures = null, CardPaper paper = CardPaper.A5)
    {
        ArgumentNullException.ThrowIfNull(card);
        var format = PaperFormat.Of(paper);
        var layout = new CardLayout(card, pictures ?? CardPictures.None, new CardStyles(), format.Content.Width);
        return PageBinder.Bind(
            format,
            layout.FirstHead(),
            layout.FurtherHead(),
            layout.Foot,
            layout.Blocks(),
            layout.Title,
            card.Date
        );
    }
}
