using PdfSharp.Drawing;

namespace Jumpwright.Paper.Layout;

/// <summary>
/// The house's look: black text and one strong black rule, thin grey lines as on ruled paper, and one accent colour for
/// the margin line and numbers. Colour never carries meaning: everything reads the same in black and white.
/// </summary>
internal static class Ink
{
    /// <summary>The accent, a deep ink blue; 8.6:1 against white.</summary>
    public const string AccentHex = "#1F4E8C";

    public const string RuleHex = "#9AA3AD";

    public static readonly XColor Accent = XColor.FromArgb(0x1F, 0x4E, 0x8C);
    public static readonly XColor Rule = XColor.FromArgb(0x9A, 0xA3, 0xAD);

    public static readonly XSolidBrush BlackBrush = new(XColors.Black);
    public static readonly XSolidBrush AccentBrush = new(Accent);

    public static readonly XPen StrongRule = new(XColors.Black, 2.6);
    public static readonly XPen BlackLine = new(XColors.Black, 0.9);
    public static readonly XPen ThinRule = new(Rule, 0.5);
    public static readonly XPen FaintRule = new(XColor.FromArgb(0xE3, 0xE6, 0xEA), 0.4);
    public static readonly XPen MarginLine = new(Accent, 0.9);
    public static readonly XPen Box = new(XColors.Black, 1.1);
}
