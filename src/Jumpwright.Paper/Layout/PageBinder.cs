using NodaTime;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace Jumpwright.Paper.Layout;

/// <summary>Fills pages with blocks under a head and over a foot, and saves them.</summary>
internal static class PageBinder
{
    /// <summary>The finished PDF.</summary>
    /// <param name="format">Sheet.</param>
    /// <param name="firstHead">Head of the first page.</param>
    /// <param name="furtherHead">Head of every further page.</param>
    /// <param name="foot">Foot of page n of m; as high on every page.</param>
    /// <param name="blocks">What is told, in order.</param>
    /// <param name="title">Title of the document.</param>
    /// <param name="date">The day the paper is for.</param>
    /// <param name="language">What it is written in, for screen readers.</param>
    public static byte[] Bind(
        PaperFormat format,
        IReadOnlyList<Row> firstHead,
        IReadOnlyList<Row> furtherHead,
        Func<int, int, IReadOnlyList<Row>> foot,
        IEnumerable<Block> blocks,
        string title,
        LocalDate date,
        string language
    )
    {
        double footHeight = foot(1, 1).Sum(r => r.Height);
        double room = format.Content.Height - footHeight;
        IReadOnlyList<IReadOnlyList<Row>> pages = PagePlan.Fill(
            blocks,
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
            Rows.Stack(g, foot(i + 1, pages.Count), format.Content.Left, format.Content.Bottom - footHeight);
        }

        return FixedPdf.Save(document, title, date, language);
    }
}
