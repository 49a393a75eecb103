using System.Collections.Immutable;

namespace Jumpwright.Athletes;

/// <summary>Surfaces in the words of squad.yaml.</summary>
public static class Surfaces
{
    private static readonly ImmutableSortedDictionary<string, Surface> Known = new Dictionary<string, Surface>
    {
        ["sprung-floor"] = Surface.SprungFloor,
        ["rubber"] = Surface.Rubber,
        ["track"] = Surface.Track,
        ["grass"] = Surface.Grass,
        ["artificial-turf"] = Surface.ArtificialTurf,
        ["sand"] = Surface.Sand,
        ["hard"] = Surface.Hard,
        ["concrete"] = Surface.Hard,
        ["asphalt"] = Surface.Hard,
        ["tiles"] = Surface.Hard,
    }.ToImmutableSortedDictionary(StringComparer.OrdinalIgnoreCase);

    /// <summary>All words that are known.</summary>
    public static IEnumerable<string> Words => Known.Keys;

    /// <summary>The surface of that word; <see cref="Surface.Unknown"/> for any other word.</summary>
    public static Surface Of(string word) => Known.GetValueOrDefault(word.Trim(), Surface.Unknown);
}
