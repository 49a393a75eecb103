using Jumpwright.Athletes;

namespace Jumpwright.Safety;

/// <summary>A place of the body as somebody wrote it, with its side.</summary>
/// <param name="Name">Lower case, without the side; empty when not said.</param>
/// <param name="Side">Side.</param>
internal readonly record struct BodySite(string Name, Side Side)
{
    public static BodySite Of(string? site, Side side)
    {
        string[] words = TextWords.Of(site);
        Side named =
            side != Side.Unknown ? side
            : words.Contains("left", StringComparer.Ordinal) ? Side.Left
            : words.Contains("right", StringComparer.Ordinal) ? Side.Right
            : Side.Unknown;
        return new(string.Join(' ', words.Where(w => w is not ("left" or "right"))), named);
    }

    /// <summary>
    /// True when words written about this place also speak of the other. No place speaks of the whole body; a place without a side,
    /// or with both, speaks of both sides; a left one never of a right one, nor of one whose side nobody said.
    /// </summary>
    public bool Covers(BodySite other) =>
        Name.Length == 0
        || (
            string.Equals(Name, other.Name, StringComparison.Ordinal)
            && (Side is Side.Unknown or Side.Both || Side == other.Side)
        );

    public override string ToString() =>
        Side switch
        {
            Side.Left => "left " + Name,
            Side.Right => "right " + Name,
            Side.Both => "both sides, " + Name,
            _ => Name,
        };
}
