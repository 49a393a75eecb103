using System.Collections.Immutable;

namespace Jumpwright.App.Wording;

/// <summary>One thing that a number comes from.</summary>
/// <param name="Name">What is asked.</param>
/// <param name="Is">What it is.</param>
public sealed record OriginLine(string Name, ImmutableArray<Piece> Is)
{
    /// <summary>Said in one piece.</summary>
    public OriginLine(string name, string text, bool isEnglish = false)
        : this(name, [new Piece(text, isEnglish)]) { }
}
