using ScottPlot;
using SkiaSharp;

namespace Jumpwright.Paper.Fonts;

/// <summary>Gives ScottPlot the shipped fonts, whatever family it asks for.</summary>
internal sealed class PlotFontResolver : IFontResolver
{
    public SKTypeface? CreateTypeface(string fontName, FontWeight weight, FontSlant slant, FontSpacing spacing) =>
        PaperFonts.Typeface(bold: weight >= FontWeight.SemiBold);

    public SKTypeface? CreateTypeface(string fontName, bool bold, bool italic) => PaperFonts.Typeface(bold);
}
