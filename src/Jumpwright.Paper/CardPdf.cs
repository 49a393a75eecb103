using Jumpwright.Paper.Layout;
using Jumpwright.Sessions;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace Jumpwright.Paper;

/// <summary>A session card as a PDF: A5, and safe on half a Letter sheet. The same card gives the same bytes.</summary>
public static class CardPdf
{
    /// <summary>Draws the card; what does not fit on one page goes on to the next, under the same head.</summary>
    public static byte[] Render(SessionCard card, CardPictures? pictures = null)
    {
        ArgumentNullException.ThrowIfNull(card);
        PaperFormat format = PaperFormat.A5;
        var styles = new CardStyles();
        var layout = new CardLayout(card, pictures ?? CardPictures.None, styles, format.Content.Width);
        IReadOnlyList<Row> firstHead = layout.FirstHead();
        IReadOnlyList<Row> furtherHead = layout.FurtherHead();
        double foot = layout.Foot(1, 1).Sum(r => r.Height);
        double room = format.Content.Height - foot;
        IReadOnlyList<IReadOnlyList<Row>> pages = PagePlan.Fill(
            layout.Blocks(),
            room - firstHead.Sum(r => r.Height),
            room - furtherHead.Sum(r => r.Height)
        );
        using var document = new PdfDocument();
        for (int i = 0; i < pages.Count; i++)
        {
            PdfPage page = document.AddPage();
            page.Width = XUnit.FromPoint(format.WidthPt);
            page.Height = XUnit.FromPoint(format.HeightPt);
            using var g = XGraphics.FromPdfPage(page);
            double y = Rows.Stack(g, i == 0 ? firstHead : furtherHead, format.Content.Left, format.Content.Top);
            Rows.Stack(g, pages[i], format.Content.Left, y);
            Rows.Stack(g, layout.Foot(i + 1, pages.Count), format.Content.Left, format.Content.Bottom - foot);
        }

        return FixedPdf.Save(document, layout.Title, card.Date);
    }
}
