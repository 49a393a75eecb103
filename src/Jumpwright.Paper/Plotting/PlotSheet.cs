using Jumpwright.Quantities;
using ScottPlot;
using SkiaSharp;

namespace Jumpwright.Paper.Plotting;

/// <summary>
/// A picture's size and type: type of 20 is read as 11 at 350 px.
/// </summary>
/// <param name="Width">px.</param>
/// <param name="Height">px.</param>
internal sealed record PlotSheet(int Width, int Height)
{
    public const float Type = 20;
    public const float TitleType = 22;
    public const float LeftPx = 88;
    public const float RightPx = 22;
    public const float TopPx = 66;

    public static readonly PlotSheet Trace = new(640, 540);
    public static readonly PlotSheet Trend = new(640, 380);

    public static readonly Color Ink = Color.FromHex("#111111");
    public static readonly Color Accent = Color.FromHex(Layout.Ink.AccentHex);
    public static readonly Color Rule = Color.FromHex("#C9CFD6");

    /// <summary>How wide a picture is printed for its type to come out at that size, pt.</summary>
    public static double WidthPt(double typePt) => Trace.Width * typePt / Type;

    public float DataWidthPx => Width - LeftPx - RightPx;

    /// <summary>Height of what is drawn between title and axis, px.</summary>
    public double DataHeightPx(double bottomPx) => Height - TopPx - bottomPx;

    /// <summary>An empty plot in the house's look, with the title on it.</summary>
    public static Plot Empty(string title, float bottomPx, PlotSheet sheet)
    {
        Fonts.PaperFonts.EnsureRegistered();
        var plot = new Plot();
        plot.Font.Set(Fonts.PaperFonts.Family);
        plot.FigureBackground.Color = Colors.White;
        plot.DataBackground.Color = Colors.White;
        plot.Axes.Color(Ink);
        plot.Grid.MajorLineColor = Rule;
        plot.Axes.Bottom.TickLabelStyle.FontSize = Type;
        plot.Axes.Left.TickLabelStyle.FontSize = Type;
        plot.Axes.Right.IsVisible = false;
        plot.Axes.Top.IsVisible = false;
        plot.Layout.Fixed(new PixelPadding(LeftPx, RightPx, bottomPx, TopPx));
        plot.Axes.Title.Label.Text = Wrapped(title, sheet.Width - 30);
        plot.Axes.Title.FullFigureCenter = true;
        plot.Axes.Title.Label.FontSize = TitleType;
        plot.Axes.Title.Label.Bold = true;
        plot.Axes.Title.Label.ForeColor = Ink;
        return plot;
    }

    /// <summary>Numbers at the axes as the language writes them, where the plot chose them itself.</summary>
    public static Plot Spoken(Plot plot, string language)
    {
        foreach (IAxis axis in new IAxis[] { plot.Axes.Left, plot.Axes.Bottom })
        {
            if (axis.TickGenerator is ScottPlot.TickGenerators.NumericAutomatic chosen)
            {
                Func<double, string> plain = chosen.LabelFormatter;
                chosen.LabelFormatter = at => Numerals.Write(plain(at), language);
            }
        }

        return plot;
    }

    public byte[] Png(Plot plot)
    {
        plot.ScaleFactor = 2;
        return plot.GetImageBytes(2 * Width, 2 * Height, ImageFormat.Png);
    }

    /// <summary>The same as JPEG, fine enough for lines and letters.</summary>
    public byte[] Jpeg(Plot plot)
    {
        plot.ScaleFactor = 2;
        return plot.GetImage(2 * Width, 2 * Height).GetImageBytes(ImageFormat.Jpeg, 92);
    }

    /// <summary>Width of drawn text, px.</summary>
    public static float WidthOf(string text, float size, bool bold = false)
    {
        using var font = new SKFont(Fonts.PaperFonts.Typeface(bold), size);
        return font.MeasureText(text);
    }

    /// <summary>At most two lines; what is longer ends in dots (the whole title is in the picture's words).</summary>
    private static string Wrapped(string title, float width)
    {
        var lines = new List<string>();
        string line = "";
        foreach (string word in Fonts.PaperFonts.Printable(title).Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            string longer = line.Length == 0 ? word : line + " " + word;
            if (line.Length > 0 && WidthOf(longer, TitleType, bold: true) > width)
            {
                lines.Add(line);
                longer = word;
            }

            line = longer;
        }

        lines.Add(line);
        if (lines.Count > 2)
        {
            lines = [lines[0], lines[1] + " …"];
        }

        return string.Join('\n', lines.Select(l => Shortened(l, width)));
    }

    private static string Shortened(string line, float width)
    {
        while (line.Length > 2 && WidthOf(line, TitleType, bold: true) > width)
        {
            line = line[..^2].TrimEnd('…', ' ') + "…";
        }

        return line;
    }
}
