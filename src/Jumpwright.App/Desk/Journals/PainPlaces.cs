using System.Text.Json;
using Jumpwright.Safety;
using Jumpwright.Storage.Stores;

namespace Jumpwright.App.Desk.Journals;

/// <summary>
/// Where it hurt, said after how bad it was: the number is kept at the first tap, and the place fills its entry. Of several words about one pain the
/// latest counts, and of two at one time the one with the greater id; but where bone may be what hurts, no tap takes that away: the last such place stays, until
/// the pain itself is taken back by name. The tablets have the same rule.
/// </summary>
internal static class PainPlaces
{
    /// <summary>The entries, each pain with the place that was said of it.</summary>
    public static IReadOnlyCollection<JournalEntry> Filled(IReadOnlyCollection<JournalEntry> entries)
    {
        var places = JournalReading
            .LatestFirst(entries.Where(e => e.Kind == EntryKinds.PainPlace))
            .Select(e => (Entry: e, Word: JournalReading.Read<PainPlaceEntry>(e)))
            .Where(w => w.Word is { Pain: not null, Site.Length: > 0 })
            .ToLookup(w => w.Word!.Pain, StringComparer.OrdinalIgnoreCase);
        return places.Count == 0
            ? entries
            : [.. entries.Select(e => e.Kind == EntryKinds.Pain ? Filled(e, places[e.Id]) : e)];
    }

    private static JournalEntry Filled(JournalEntry pain, IEnumerable<(JournalEntry Entry, PainPlaceEntry? Word)> words)
    {
        PainPlaceEntry[] places =
        [
            .. words
                .Where(w => w.Entry.AthleteId == pain.AthleteId && w.Entry.SessionId == pain.SessionId)
                .Select(w => w.Word)
                .OfType<PainPlaceEntry>(),
        ];
        PainPlaceEntry? place = places.FirstOrDefault(p => SorePlaces.MayBeBone(p.Site!)) ?? places.FirstOrDefault();
        return place is not null && JournalReading.Read<PainEntry>(pain) is { } said
            ? pain with
            {
                Json = JsonSerializer.Serialize(said with { Site = place.Site, Side = place.Side }),
            }
            : pain;
    }
}
