using Jumpwright.Paper.Plotting;
using Jumpwright.Prescribing.Reports;
using PdfSharp.Drawing;

namespace Jumpwright.Paper.Layout;

/// <summary>Turns a report into rows: headings, plain words, and pictures two in a line.</summary>
internal sealed class ReportLayout(Report report, double width, PaperWords words)
{
    private const double Gutter = 12;

    private readonly TextStyle _title = TextStyle.Of(18, bold: true);
    private readonly TextStyle _section = TextStyle.Of(12, bold: true, Ink.AccentBrush);
    private readonly TextStyle _body = TextStyle.Of(10);
    private readonly TextStyle _strong = TextStyle.Of(10, bold: true);
    private readonly TextStyle _foot = TextStyle.Of(7.5);

    private string Whose => words.Say($"{report.Title}, {report.AsOf:d MMMM uuuu}");

    public string Title => words.Say($"Report: {Whose}");

    public IReadOnlyList<Row> FirstHead() =>
        [
            Rows.Rule(Ink.StrongRule, width, 1.3, 4),
            .. Rows.Text(0, width, new Run(report.Title, _title)),
            .. Rows.Text(0, width, new Run(words.Say($"What is known up to {report.AsOf:d MMMM uuuu}."), _body)),
            Rows.Rule(Ink.BlackLine, width, 3, 6),
        ];

    public IReadOnlyList<Row> FurtherHead() =>
        [
            Rows.Rule(Ink.StrongRule, width, 1.3, 4),
            .. Rows.Text(0, width, new Run(Whose, _strong)),
            Rows.Rule(Ink.BlackLine, width, 3, 6),
        ];

    public IReadOnlyList<Row> Foot(int page, int pages) =>
        [Row.Gap(4), .. Rows.Text(0, width, new Run(words.Say($"{report.Foot} Page {page} of {pages}."), _foot))];

    public IEnumerable<Block> Blocks()
    {
        foreach (ReportSection section in report.Sections)
        {
            Row[] head =
            [
                Row.Gap(6),
                .. Rows.Text(0, width, new Run(words.Say(section.Heading), _section)),
                Row.Gap(2),
            ];
            bool first = true;
            foreach (ReportParagraph paragraph in section.Paragraphs)
            {
                Row[] rows = [.. Rows.Text(0, width, new Run(words.Say(paragraph.Said), _body)), Row.Gap(3)];
                yield return new Block(first ? [.. head, .. rows] : rows);
                first = false;
            }

            foreach (ReportPlot[] pair in section.Plots.Chunk(2))
            {
                yield return new Block([Pictures(pair), Row.Gap(6)]);
            }
        }
    }

    private Row Pictures(ReportPlot[] pair)
    {
        double each = (width - Gutter) / 2;
        double height = each * PlotSheet.Trend.Height / PlotSheet.Trend.Width;
        byte[][] pictures = [.. pair.Select(plot => BandPlot.Jpeg(plot.Written(words.Say), words.Language))];
        return new Row(
            height,
            (g, x, y) =>
            {
                for (int i = 0; i < pictures.Length; i++)
                {
                    using var image = XImage.FromStream(new MemoryStream(pictures[i]));
                    g.DrawImage(image, x + (i * (each + Gutter)), y, each, height);
                }
            }
        );
    }
}
