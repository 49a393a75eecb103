using System.Collections.Immutable;
using Jumpwright.App.Desk.Journals;
using static Jumpwright.App.Wording.TextBook;

namespace Jumpwright.App.Wording;

/// <summary>
/// Places of the body. Files keep them in English, which is what safety knows them by; pages say the usual ones in the reader's
/// language, and read them back from it.
/// </summary>
internal static class PlaceWords
{
    private const string Own = "en";

    /// <summary>The usual ones, from the ground up, as files name them.</summary>
    public static ImmutableArray<string> Usual { get; } =
    [
        "foot",
        "heel",
        "ankle",
        "achilles",
        "calf",
        "shin",
        "knee",
        "patellar tendon",
        "thigh",
        "hamstring",
        "quad",
        "groin",
        "hip",
        "lower back",
        "back",
        "head",
        "chest",
    ];

    private static readonly ImmutableHashSet<string> Known =
    [
        .. Usual,
        "achilles tendon",
        "shoulder",
        "elbow",
        "wrist",
        "neck",
    ];

    /// <summary>A place as the page names it; one that nobody knows stands as it was written.</summary>
    public static Piece Of(string site) =>
        site == PainEntry.PlaceNotSaid ? new(T["place.not-said"])
        : Speech.Now.Language != Own
        && site.Trim().ToLowerInvariant() is var place
        && Known.Contains(place)
        && SpokenSentences.TemplateIn(Speech.Now.Language, Template(place)) is { } said
            ? new(said)
        : new(site, IsEnglish: true);

    /// <summary>The usual ones in the language of the page, to choose from.</summary>
    public static IEnumerable<string> Offered() => Usual.Select(p => Of(p).Text);

    /// <summary>What somebody typed, as files name it: in English where it is a place we know, else as typed.</summary>
    public static string Read(string typed)
    {
        string place = typed.Trim();
        return Usual.FirstOrDefault(p =>
                TextBook.Languages.Any(l =>
                    string.Equals(
                        l == Own ? p : SpokenSentences.TemplateIn(l, Template(p)),
                        place,
                        StringComparison.OrdinalIgnoreCase
                    )
                )
            ) ?? place;
    }

    /// <summary>How a sentence says it: files write all small.</summary>
    private static string Template(string place) => place.Replace("achilles", "Achilles", StringComparison.Ordinal);
}
