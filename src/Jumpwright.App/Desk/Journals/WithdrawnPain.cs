using System.Collections.Immutable;
using Jumpwright.Storage.Stores;
using NodaTime;

namespace Jumpwright.App.Desk.Journals;

/// <summary>
/// Pains that were taken back. Both entries stay in the journal. It counts only where a person with a name took back that athlete's
/// pain of that session, after it and on its own day: later nobody knows any more whether it hurt, so it did.
/// </summary>
internal static class WithdrawnPain
{
    /// <summary>Every word that takes a pain back, with the pain where there is one, and whether it counts.</summary>
    public static ImmutableArray<(JournalEntry Entry, PainWithdrawnEntry Word, JournalEntry? Pain, bool Counts)> Of(
        IReadOnlyCollection<JournalEntry> entries,
        DateTimeZone zone
    )
    {
        var pains = entries
            .Where(e => e.Kind == EntryKinds.Pain)
            .DistinctBy(e => e.Id, StringComparer.OrdinalIgnoreCase)
            .ToDictionary(e => e.Id, StringComparer.OrdinalIgnoreCase);
        return
        [
            .. entries
                .Where(e => e.Kind == EntryKinds.PainWithdrawn)
                .Select(e => (Entry: e, Word: JournalReading.Read<PainWithdrawnEntry>(e)!))
                .Where(w => w.Word is { Pain: not null, By: not null })
                .Select(w => (w.Entry, w.Word, Pain: pains.GetValueOrDefault(w.Word.Pain)))
                .Select(w => (w.Entry, w.Word, w.Pain, w.Pain is { } pain && Counts(w.Entry, w.Word, pain, zone))),
        ];
    }

    /// <summary>The entries without the pains that were taken back.</summary>
    public static IReadOnlyCollection<JournalEntry> Without(
        IReadOnlyCollection<JournalEntry> entries,
        DateTimeZone zone
    )
    {
        HashSet<string> gone = new(
            Of(entries, zone).Where(w => w.Counts).Select(w => w.Pain!.Id),
            StringComparer.OrdinalIgnoreCase
        );
        return gone.Count == 0 ? entries : [.. entries.Where(e => e.Kind != EntryKinds.Pain || !gone.Contains(e.Id))];
    }

    private static bool Counts(JournalEntry entry, PainWithdrawnEntry word, JournalEntry pain, DateTimeZone zone) =>
        !string.IsNullOrWhiteSpace(word.By)
        && pain.AthleteId is not null
        && entry.AthleteId == pain.AthleteId
        && pain.SessionId is not null
        && entry.SessionId == pain.SessionId
        && TakingBack.IsInTime(entry, pain, zone);
}
