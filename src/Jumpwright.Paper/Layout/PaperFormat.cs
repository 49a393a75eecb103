using PdfSharp.Drawing;

namespace Jumpwright.Paper.Layout;

/// <summary>A sheet and the part of it that is written on, pt.</summary>
/// <param name="WidthPt">Sheet's width.</param>
/// <param name="HeightPt">Sheet's height.</param>
/// <param name="Content">The part that is written on, from the top left corner.</param>
internal sealed record PaperFormat(double WidthPt, double HeightPt, XRect Content)
{
    /// <summary>A5 upright; what is written also fits half a Letter sheet (139.7 × 215.9 mm) with 8 mm to its edges.</summary>
    public static readonly PaperFormat A5 = Centred(148, 210, 139.7 - 16, 210 - 16);

    /// <summary>A4 upright.</summary>
    public static readonly PaperFormat A4 = Centred(210, 297, 210 - 28, 297 - 24);

    /// <summary>Letter upright.</summary>
    public static readonly PaperFormat Letter = Centred(215.9, 279.4, 215.9 - 28, 279.4 - 24);

    /// <summary>A4 on its side; what is written also fits Letter on its side (279.4 × 215.9 mm) with 10 mm to its edges.</summary>
    public static readonly PaperFormat A4OnItsSide = Centred(297, 210, 279.4 - 20, 210 - 20);

    public static PaperFormat Of(CardPaper paper) =>
        paper switch
        {
            CardPaper.A4 => A4,
            CardPaper.Letter => Letter,
            _ => A5,
        };

    /// <summary>A4 upright; what is written also fits Letter upright (215.9 × 279.4 mm) with 12 mm to its edges.</summary>
    public static readonly PaperFormat A4OrLetter = Centred(210, 297, 210 - 30, 279.4 - 24);

    public static double Mm(double mm) => mm * 72 / 25.4;

    private static PaperFormat Centred(
        double widthMm,
        double heightMm,
        double contentWidthMm,
        double contentHeightMm
    ) =>
        new(
            Mm(widthMm),
            Mm(heightMm),
            new XRect(
                Mm((widthMm - contentWidthMm) / 2),
                Mm((heightMm - contentHeightMm) / 2),
                Mm(contentWidthMm),
                Mm(contentHeightMm)
            )
        );
}
