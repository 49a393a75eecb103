namespace Jumpwright.Paper;

/// <summary>The pictures that go on a card; either may be missing.</summary>
/// <param name="LastJump">The last jump with its phases.</param>
/// <param name="Trend">How a measure went.</param>
public sealed record CardPictures(Picture? LastJump, Picture? Trend)
{
    public static readonly CardPictures None = new(null, null);
}
