using PdfSharp.Fonts;

namespace Jumpwright.Paper.Fonts;

/// <summary>Gives PDFsharp the shipped fonts, whatever family it asks for.</summary>
internal sealed class PdfFontResolver : IFontResolver
{
    private const string RegularFace = "Lato-Regular";
    private const string BoldFace = "Lato-Bold";

    public byte[]? GetFont(string faceName) =>
        PaperFonts.Load(bold: string.Equals(faceName, BoldFace, StringComparison.Ordinal));

    public FontResolverInfo? ResolveTypeface(string familyName, bool bold, bool italic) =>
        new(bold ? BoldFace : RegularFace);
}
