namespace Jumpwright.Paper;

/// <summary>A drawn picture with the words that say the same.</summary>
/// <param name="Png">PNG for paper.</param>
/// <param name="Svg">The same as an SVG element that can stand inside a page.</param>
/// <param name="Caption">What is seen, with its numbers.</param>
public sealed record Picture(byte[] Png, string Svg, string Caption);
