using System.Collections.Immutable;
using Jumpwright.Storage.Stores;

namespace Jumpwright.App.Desk.Journals;

/// <summary>
/// Who and what is there on the day of a session, as the floor said it: of each athlete, each kind of kit and the minutes the latest
/// word counts, and of two at one time the one with the greater id, whoever said it. The tablets have the same rule.
/// </summary>
/// <param name="Away">Athletes who are not here.</param>
/// <param name="Kit">Pieces at hand, by kind; only kinds that somebody counted.</param>
/// <param name="Minutes">min; null where nobody said.</param>
public sealed record FloorToday(ImmutableHashSet<string> Away, ImmutableDictionary<string, int> Kit, int? Minutes)
{
    /// <summary>True once anybody was said to be here or away.</summary>
    public bool Called { get; init; }

    /// <summary>What the journal says of a session.</summary>
    public static FloorToday Of(IEnumerable<JournalEntry> journal, string session)
    {
        JournalEntry[] theirs = [.. JournalReading.LatestFirst(journal.Where(e => e.SessionId == session))];
        return new FloorToday(
            [
                .. theirs
                    .Where(e => e.Kind == EntryKinds.Here && e.AthleteId is not null)
                    .DistinctBy(e => e.AthleteId)
                    .Where(e => JournalReading.Read<HereEntry>(e) is { Here: false })
                    .Select(e => e.AthleteId!),
            ],
            theirs
                .Where(e => e.Kind == EntryKinds.Kit)
                .Select(JournalReading.Read<KitEntry>)
                .OfType<KitEntry>()
                .DistinctBy(k => k.Kit)
                .ToImmutableDictionary(k => k.Kit, k => Math.Max(0, k.Count), StringComparer.Ordinal),
            theirs
                .Where(e => e.Kind == EntryKinds.Minutes)
                .Select(JournalReading.Read<MinutesEntry>)
                .OfType<MinutesEntry>()
                .FirstOrDefault()
                ?.Minutes
        )
        {
            Called = theirs.Any(e => e.Kind == EntryKinds.Here),
        };
    }
}
