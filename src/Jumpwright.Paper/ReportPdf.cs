using Jumpwright.Paper.Layout;
using Jumpwright.Paper.Plotting;
using Jumpwright.Prescribing.Reports;
using Jumpwright.Quantities;

namespace Jumpwright.Paper;

/// <summary>A report as a PDF: A4 upright, safe on Letter; and its pictures. The same report gives the same bytes.</summary>
public static class ReportPdf
{
    /// <summary>Draws the report.</summary>
    /// <param name="report">What is told.</param>
    /// <param name="writer">In which language and units; English and metric when null.</param>
    public static byte[] Render(Report report, SentenceWriter? writer = null)
    {
        ArgumentNullException.ThrowIfNull(report);
        var words = new PaperWords(writer ?? SentenceWriter.English);
        var layout = new ReportLayout(report, PaperFormat.A4OrLetter.Content.Width, words);
        return PageBinder.Bind(
            PaperFormat.A4OrLetter,
            layout.FirstHead(),
            layout.FurtherHead(),
            layout.Foot,
            layout.Blocks(),
            layout.Title,
            report.AsOf,
            words.Language
        );
    }

    /// <summary>One of its pictures.</summary>
    public static Picture Draw(ReportPlot plot, SentenceWriter? writer = null)
    {
        ArgumentNullException.ThrowIfNull(plot);
        SentenceWriter by = writer ?? SentenceWriter.English;
        ReportPlot written = plot.Written(by.Write);
        return new Picture(
            () => BandPlot.Png(written, by.Language),
            () => BandPlot.Jpeg(written, by.Language),
            () => BandPlot.Svg(written, by.Language),
            written.InWords
        );
    }

    /// <summary>The same for a page.</summary>
    public static string Svg(ReportPlot plot, string language = "en")
    {
        ArgumentNullException.ThrowIfNull(plot);
        return BandPlot.Svg(plot, language);
    }
}
