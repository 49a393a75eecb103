namespace Jumpwright.Paper.Layout;

/// <summary>A stretch of text in one style.</summary>
internal sealed record Run(string Text, TextStyle Style);
