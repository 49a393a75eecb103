using Jumpwright.Paper.Layout;
using Jumpwright.Paper.Plotting;
using Jumpwright.Prescribing.Reports;

namespace Jumpwright.Paper;

/// <summary>A report as a PDF: A4 upright, safe on Letter; and its pictures. The same report gives the same bytes.</summary>
public static class ReportPdf
{
    /// <summary>Draws the report.</summary>
    public static byte[] Render(Report report)
    {
        ArgumentNullException.ThrowIfNull(report);
        var layout = new ReportLayout(report, PaperFormat.A4OrLetter.Content.Width);
        return PageBinder.Bind(
            PaperFormat.A4OrLetter,
            layout.FirstHead(),
            layout.FurtherHead(),
            layout.Foot,
            layout.Blocks(),
            layout.Title,
            report.AsOf,
            "en"
        );
    }

    /// <summary>One of its pictures.</summary>
    public static Picture Draw(ReportPlot plot)
    {
        ArgumentNullException.ThrowIfNull(plot);
        return new Picture(() => BandPlot.Png(plot), () => BandPlot.Svg(plot), plot.InWords);
    }

    /// <summary>The same for a page.</summary>
    public static string Svg(ReportPlot plot)
    {
        ArgumentNullException.ThrowIfNull(plot);
        return BandPlot.Svg(plot);
    }
}
