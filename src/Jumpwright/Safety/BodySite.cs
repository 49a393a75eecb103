using Jumpwright.Athletes;
using Jumpwright.Quantities;

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

    /// <summary>The place as sentences name it.</summary>
    public Sentence Said =>
        Side switch
        {
            Side.Left => $"left {SaidName}",
            Side.Right => $"right {SaidName}",
            Side.Both => $"both sides, {SaidName}",
            _ => SaidName,
        };

    /// <summary>Places that are often written have words in every language; any other stands as it was written.</summary>
    private Sentence SaidName =>
        Name switch
        {
            "knee" => $"knee",
            "achilles" => $"Achilles",
            "achilles tendon" => $"Achilles tendon",
            "patellar tendon" => $"patellar tendon",
            "calf" => $"calf",
            "ankle" => $"ankle",
            "heel" => $"heel",
            "foot" => $"foot",
            "shin" => $"shin",
            "thigh" => $"thigh",
            "hamstring" => $"hamstring",
            "quad" => $"quad",
            "hip" => $"hip",
            "groin" => $"groin",
            "back" => $"back",
            "lower back" => $"lower back",
            "shoulder" => $"shoulder",
            "elbow" => $"elbow",
            "wrist" => $"wrist",
            "neck" => $"neck",
            "head" => $"head",
            "chest" => $"chest",
            _ => $"{Name}",
        };

    public override string ToString() => Said.ToString();
}
