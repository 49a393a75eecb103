using System.Globalization;
using System.Text;
using PdfSharp.Fonts;
using SkiaSharp;

namespace Jumpwright.Paper.Fonts;

/// <summary>
/// The fonts that ship with the product, registered once a process, so that no font of the machine is ever needed.
/// Safe to call from several threads.
/// </summary>
internal static class PaperFonts
{
    /// <summary>Family name under which both libraries know the shipped fonts.</summary>
    public const string Family = "Lato";

    private static readonly Lazy<SKTypeface> Regular = new(() =>
        SKTypeface.FromData(SKData.CreateCopy(Load(bold: false)))
    );
    private static readonly Lazy<SKTypeface> Bold = new(() => SKTypeface.FromData(SKData.CreateCopy(Load(bold: true))));
    private static readonly Lazy<bool> Registered = new(Register);

    /// <summary>Call before the first font is made; further calls do nothing.</summary>
    public static void EnsureRegistered() => _ = Registered.Value;

    /// <summary>The shipped typeface.</summary>
    public static SKTypeface Typeface(bool bold) => (bold ? Bold : Regular).Value;

    /// <summary>The font file's bytes.</summary>
    public static byte[] Load(bool bold)
    {
        string name = $"Jumpwright.Paper.Fonts.Lato-{(bold ? "Bold" : "Regular")}.ttf";
        using Stream stream =
            typeof(PaperFonts).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"The font {name} is not inside the assembly.");
        byte[] bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }

    /// <summary>
    /// Text as it can be drawn: control and direction characters are left out (they could rearrange a line),
    /// a character that the shipped font has no glyph for becomes an empty box, so that its absence shows.
    /// </summary>
    public static string Printable(string text)
    {
        var printable = new StringBuilder(text.Length);
        foreach (Rune rune in text.EnumerateRunes())
        {
            UnicodeCategory kind = Rune.GetUnicodeCategory(rune);
            if (Rune.IsWhiteSpace(rune))
            {
                printable.Append(rune.Value == 0x00A0 ? '\u00A0' : ' ');
            }
            else if (kind is UnicodeCategory.Control or UnicodeCategory.Format)
            {
                continue;
            }
            else if (rune.IsBmp && Typeface(bold: false).ContainsGlyph(rune.Value))
            {
                printable.Append(rune.ToString());
            }
            else
            {
                printable.Append('\u25A1');
            }
        }

        return printable.ToString();
    }

    /// <summary>Text for a page: every letter kept, control and direction characters left out.</summary>
    public static string Readable(string text)
    {
        var readable = new StringBuilder(text.Length);
        foreach (Rune rune in text.EnumerateRunes())
        {
            if (Rune.IsWhiteSpace(rune))
            {
                readable.Append(' ');
            }
            else if (Rune.GetUnicodeCategory(rune) is not (UnicodeCategory.Control or UnicodeCategory.Format))
            {
                readable.Append(rune.ToString());
            }
        }

        return readable.ToString();
    }

    /// <summary>True when every visible character has a glyph, so that the printed text can be read.</summary>
    public static bool CanDraw(string text) =>
        !Printable(text).Contains('\u25A1', StringComparison.Ordinal)
        || text.Contains('\u25A1', StringComparison.Ordinal);

    private static bool Register()
    {
        GlobalFontSettings.FontResolver ??= new PdfFontResolver();
        ScottPlot.Fonts.FontResolvers.Insert(0, new PlotFontResolver());
        ScottPlot.Fonts.Default = Family;
        return true;
    }
}
