using PdfSharp.Drawing;

namespace Jumpwright.Paper.Layout;

/// <summary>The smallest thing that is never cut by a page's end: a height and how it is drawn at a top left corner, pt.</summary>
internal sealed record Row(double Height, Action<XGraphics, double, double> Draw)
{
    public static Row Gap(double height) => new(height, static (_, _, _) => { });
}
