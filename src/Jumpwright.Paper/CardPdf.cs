using Jumpwright.Paper.Layout;
using Jumpwright.Sessions;

namespace Jumpwright.Paper;

/// <summary>A session card as a PDF: A5, and safe on half a Letter sheet. The same card gives the same bytes.</summary>
public static class CardPdf
{
    /// <summary>Draws the card; what does not fit on one page goes on to the next, under the same head.</summary>
    public static byte[] Render(SessionCard card, CardPictures? pictures = null)
    {
        ArgumentNullException.ThrowIfNull(card);
        var layout = new CardLayout(
            card,
            pictures ?? CardPictures.None,
            new CardStyles(),
            PaperFormat.A5.Content.Width
        );
        return PageBinder.Bind(
            PaperFormat.A5,
            layout.FirstHead(),
            layout.FurtherHead(),
            layout.Foot,
            layout.Blocks(),
            layout.Title,
            card.Date
        );
    }
}
