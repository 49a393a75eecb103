using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Safety;
using Jumpwright.Storage.Stores;
using NodaTime;

namespace Jumpwright.App.Desk.Journals;

/// <summary>
/// What may have been done of an exercise that pain stopped and that nobody logged: the set in which it was said, or all that was planned
/// where no set of it was logged. Known, and so nothing, once somebody said how many reps of the last set were done, and once all sets are
/// logged.
/// </summary>
internal static class BrokenOff
{
    public static IEnumerable<PossibleWork> Of(IReadOnlyCollection<JournalEntry> theirs, DateTimeZone zone)
    {
        var sets = SetsDone.Effective(theirs).ToLookup(s => (s.Entry.SessionId, s.Set.Exercise, s.Set.Test));
        return theirs
            .Where(e => e.Kind == EntryKinds.Pain && e.AthleteId is not null)
            .Select(e => (Entry: e, Pain: JournalReading.Read<PainEntry>(e)))
            .Where(p => p.Pain is { When: "during", Exercise: not null } pain && Stops(pain))
            .GroupBy(p => (p.Entry.SessionId, p.Pain!.Exercise!, p.Pain.Work?.Test))
            .Select(stop =>
            {
                // Where an older tablet did not say what was planned, that it was begun is all that is known.
                WorkEntry? work = stop.Select(p => p.Pain!.Work)
                    .OfType<WorkEntry>()
                    .MaxBy(w => w.Sets * w.ContactsPerSet);
                return Open([.. sets[stop.Key].Select(s => s.Set)], work) is { } contacts
                    ? new PossibleWork(
                        stop.First().Entry.AthleteId!,
                        SetsDone.DayOf(stop.First().Entry, zone),
                        stop.Key.SessionId ?? "",
                        stop.Key.Item2,
                        contacts,
                        work?.DropHeightM
                    )
                    : null;
            })
            .OfType<PossibleWork>();
    }

    private static bool Stops(PainEntry pain) =>
        pain.SiteNew
        || pain.Score > (pain.Work?.StopsAbove ?? 0)
        || (pain.Score > 0 && pain.Site is { } site && SorePlaces.MayBeBone(site));

    /// <summary>Contacts that may have been done beyond the sets; null where none can have been.</summary>
    private static int? Open(SetEntry[] sets, WorkEntry? work)
    {
        if (sets.MaxBy(s => s.Number) is not { } last)
        {
            return (work?.Sets ?? 0) * (work?.ContactsPerSet ?? 0);
        }

        return last.BrokenOff || work is null || sets.Length >= work.Sets ? null : work.ContactsPerSet;
    }
}
