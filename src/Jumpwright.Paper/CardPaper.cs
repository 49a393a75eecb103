namespace Jumpwright.Paper;

/// <summary>The papers a card is printed on.</summary>
public enum CardPaper
{
    /// <summary>148 × 210 mm, and safe on half a Letter sheet: what fits a pocket.</summary>
    A5,

    /// <summary>210 × 297 mm.</summary>
    A4,

    /// <summary>215.9 × 279.4 mm.</summary>
    Letter,
}
