using PdfSharp.Drawing;

namespace Jumpwright.Paper.Layout;

/// <summary>A font at a size with its brush and line height, pt.</summary>
internal sealed class TextStyle
{
    private static readonly XGraphics Ruler = XGraphics.CreateMeasureContext(
        new XSize(1000, 1000),
        XGraphicsUnit.Point,
        XPageDirection.Downwards
    );

    private readonly Dictionary<string, double> _widths = new(StringComparer.Ordinal);

    private TextStyle(double sizePt, bool bold, XBrush brush)
    {
        Fonts.PaperFonts.EnsureRegistered();
        Font = new XFont(Fonts.PaperFonts.Family, sizePt, bold ? XFontStyleEx.Bold : XFontStyleEx.Regular);
        Brush = brush;
        LineHeight = sizePt * 1.25;
        Ascent = sizePt * 0.98;
    }

    public XFont Font { get; }
    public XBrush Brush { get; }
    public double LineHeight { get; }

    /// <summary>From the top of a line to its baseline, pt.</summary>
    public double Ascent { get; }

    public static TextStyle Of(double sizePt, bool bold = false, XBrush? brush = null) =>
        new(sizePt, bold, brush ?? Ink.BlackBrush);

    /// <summary>Width of the text, pt. One instance is used by one document at a time.</summary>
    public double Width(string text)
    {
        if (!_widths.TryGetValue(text, out double width))
        {
            lock (Ruler)
            {
                width = Ruler.MeasureString(text, Font, XStringFormats.BaseLineLeft).Width;
            }

            _widths[text] = width;
        }

        return width;
    }

    public void Draw(XGraphics g, string text, double x, double baseline) =>
        g.DrawString(text, Font, Brush, x, baseline, XStringFormats.BaseLineLeft);
}
