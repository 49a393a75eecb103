namespace Jumpwright.Paper.Layout;

/// <summary>Text of one style at its place in a line, pt from the line's left end.</summary>
internal sealed record Piece(string Text, TextStyle Style, double X);
