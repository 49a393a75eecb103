using Jumpwright.Paper.Layout;
using Jumpwright.Quantities;
using Jumpwright.Sessions;

namespace Jumpwright.Paper;

/// <summary>
/// The coach's sheet of one session as a PDF: A4 on its side, and safe on Letter on its side. What is to be watched in
/// whom begins a page of its own, so that the pages before it can hang on the wall. The same sheet gives the same bytes.
/// </summary>
public static class CoachSheetPdf
{
    /// <summary>Draws the sheet.</summary>
    /// <param name="sheet">What is told.</param>
    /// <param name="writer">In which language and units; English and metric when null.</param>
    public static byte[] Render(CoachSheet sheet, SentenceWriter? writer = null)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        var words = new PaperWords(writer ?? SentenceWriter.English);
        var layout = new SheetLayout(sheet, PaperFormat.A4OnItsSide.Content.Width, words);
        return PageBinder.Bind(
            PaperFormat.A4OnItsSide,
            layout.FirstHead(),
            layout.FurtherHead(),
            layout.Foot,
            layout.Blocks(),
            layout.Title,
            sheet.Date,
            words.Language
        );
    }
}
