using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Prescribing.Proposals;
using Jumpwright.Storage.Stores;
using NodaTime;
using NodaTime.Text;

namespace Jumpwright.App.Desk.Journals;

/// <summary>
/// Sets logged on the floor as work done. A row of completed.csv for the same athlete, session and exercise was written by
/// somebody who looked back on it, so its amounts count instead; pain is never lowered by either.
/// </summary>
internal static class SetsDone
{
    public static ImmutableArray<CompletedItem> Merge(
        ImmutableArray<CompletedItem> written,
        IReadOnlyCollection<JournalEntry> theirs,
        DateTimeZone zone
    )
    {
        (JournalEntry Entry, PainEntry Pain)[] pains =
        [
            .. theirs
                .Where(e => e.Kind == EntryKinds.Pain)
                .Select(e => (e, JournalReading.Read<PainEntry>(e)!))
                .Where(p => p.Item2 is not null),
        ];
        ILookup<string?, EffortEntry> efforts = JournalReading
            .LatestFirst(theirs.Where(e => e.Kind == EntryKinds.Effort))
            .Select(e => (e.SessionId, Effort: JournalReading.Read<EffortEntry>(e)!))
            .Where(e => e.Effort is not null)
            .ToLookup(e => e.SessionId, e => e.Effort);
        var all = written.ToBuilder();
        // Sets from another box are a row of their own: nobody has trained from the highest of them all.
        foreach (var group in Done(theirs).GroupBy(s => (s.Entry.SessionId, s.Set.Exercise, s.Set.DropHeightM)))
        {
            (JournalEntry first, SetEntry set) = group.First();
            LocalDate day = DayOf(first, zone);
            double? during = Worst(pains, group.Key.SessionId, "during", group.Key.Exercise);
            double? morning = Worst(pains, group.Key.SessionId, "next-morning", group.Key.Exercise);
            EffortEntry? effort = efforts[group.Key.SessionId].FirstOrDefault();
            int at = written
                .ToList()
                .FindIndex(c =>
                    c.Date == day
                    && c.ExerciseId == set.Exercise
                    && (c.SessionId == group.Key.SessionId || c.SessionId.Length == 0)
                );
            if (at >= 0)
            {
                all[at] = all[at] with
                {
                    PainDuring = Higher(all[at].PainDuring, during),
                    PainNextMorning = Higher(all[at].PainNextMorning, morning),
                    EffortRpe = all[at].EffortRpe ?? effort?.Rpe,
                    SessionMinutes = all[at].SessionMinutes ?? effort?.Minutes,
                };
                continue;
            }

            all.Add(
                new CompletedItem(
                    first.AthleteId!,
                    day,
                    group.Key.SessionId ?? "",
                    set.Exercise,
                    // A set that was broken off is no set of so many reps; its contacts count.
                    Math.Max(1, group.Count(s => !s.Set.BrokenOff)),
                    group.GroupBy(s => s.Set.BrokenOff).MinBy(s => s.Key)!.Max(s => s.Set.Reps),
                    group.Sum(s => s.Set.Contacts),
                    group.Any(s => s.Set.Faults is not null) ? group.Sum(s => s.Set.Faults ?? 0) : null,
                    during,
                    morning,
                    effort?.Rpe,
                    group.Key.DropHeightM,
                    null
                )
                {
                    HeightM = Mean(group, s => s.HeightM),
                    ContactTimeS = Mean(group, s => s.ContactTimeS),
                    SessionMinutes = effort?.Minutes,
                    ContactsInTests = group.Where(s => s.Set.Test is not null).Sum(s => s.Set.Contacts),
                }
            );
        }

        return all.ToImmutable();
    }

    /// <summary>
    /// An athlete's session set by set, as a stop rule is held against it. Pain during an exercise stands at its last set: nobody
    /// writes down after which it was said, and so a rule that it broke is not said to have been passed over. Trials of proposed tests
    /// have a rule of their own and are not among them.
    /// </summary>
    public static ImmutableArray<CompletedItem> BySet(
        IReadOnlyCollection<JournalEntry> theirs,
        string session,
        LocalDate day
    ) => [.. Rows(theirs, session, day).Where(r => r.Set.Test is null).Select(r => r.Item)];

    /// <summary>Each proposed test that was begun, with the rule it was done under and its trials; where no rule was handed in, none.</summary>
    public static ImmutableArray<(string Question, TestStop Rule, ImmutableArray<CompletedItem> Trials)> Tests(
        IReadOnlyCollection<JournalEntry> theirs,
        string session,
        LocalDate day
    ) =>
        [
            .. Rows(theirs, session, day)
                .Where(r => r.Set is { Test: not null, Stop: not null })
                .GroupBy(r => (r.Set.Test!, r.Set.Exercise))
                .Select(g =>
                    (
                        g.Key.Item1,
                        g.First().Set.Stop!.Rule,
                        ImmutableArray.CreateRange(g.OrderBy(r => r.Set.Number).Select(r => r.Item))
                    )
                ),
        ];

    private static IEnumerable<(SetEntry Set, CompletedItem Item)> Rows(
        IReadOnlyCollection<JournalEntry> theirs,
        string session,
        LocalDate day
    )
    {
        (JournalEntry Entry, PainEntry Pain)[] pains =
        [
            .. theirs
                .Where(e => e.Kind == EntryKinds.Pain)
                .Select(e => (e, JournalReading.Read<PainEntry>(e)!))
                .Where(p => p.Item2 is not null),
        ];
        return Effective(theirs.Where(e => e.SessionId == session))
            .GroupBy(s => (s.Set.Exercise, s.Set.Test))
            .SelectMany(exercise =>
            {
                int last = exercise.Max(s => s.Set.Number);
                return exercise.Select(s =>
                    (
                        s.Set,
                        new CompletedItem(
                            s.Entry.AthleteId!,
                            day,
                            session,
                            s.Set.Exercise,
                            1,
                            s.Set.Reps,
                            s.Set.Contacts,
                            s.Set.Faults,
                            s.Set.Number == last ? Worst(pains, session, "during", s.Set.Exercise) : null,
                            null,
                            null,
                            s.Set.DropHeightM,
                            null
                        )
                        {
                            Set = s.Set.Number,
                            PainSiteNew = s.Set.Number == last && IsNewPlace(pains, session, s.Set),
                            HeightM = s.Set.HeightM,
                            ContactTimeS = s.Set.ContactTimeS,
                        }
                    )
                );
            });
    }

    /// <summary>Whether a pain stands at logged sets, whose work done then carries its score.</summary>
    public static bool Carry(IEnumerable<JournalEntry> theirs, JournalEntry entry, PainEntry pain) =>
        pain.When is "during" or "next-morning"
        && Done(theirs)
            .Any(s =>
                s.Entry.SessionId == entry.SessionId && (pain.Exercise is null || pain.Exercise == s.Set.Exercise)
            );

    /// <summary>The sets of which something was done: one that was broken off before its first rep is known to have been none.</summary>
    public static IEnumerable<(JournalEntry Entry, SetEntry Set)> Done(IEnumerable<JournalEntry> entries) =>
        Effective(entries).Where(s => !s.Set.BrokenOff || s.Set.Reps > 0);

    /// <summary>Each set once, by the rule: the later word counts; a set taken back does not.</summary>
    public static IEnumerable<(JournalEntry Entry, SetEntry Set)> Effective(IEnumerable<JournalEntry> entries) =>
        Words(entries)
            .GroupBy(s => (s.Entry.AthleteId, s.Entry.SessionId, s.Set.Exercise, s.Set.Number, s.Set.Test))
            .Select(g => g.First())
            .Where(s => !s.Set.Undone)
            .OrderBy(s => s.Entry.MadeAt)
            .ThenBy(s => s.Entry.Id, StringComparer.Ordinal);

    /// <summary>Sets about which two words differ, the one that counts first.</summary>
    public static IEnumerable<(JournalEntry Entry, SetEntry Set)[]> Differing(IEnumerable<JournalEntry> entries) =>
        Words(entries)
            .GroupBy(s => (s.Entry.AthleteId, s.Entry.SessionId, s.Set.Exercise, s.Set.Number, s.Set.Test))
            .Where(g =>
                g.Select(s => s.Set).Distinct().Count() > 1 && g.Select(s => s.Entry.Who).Distinct().Count() > 1
            )
            .Select(g => g.ToArray());

    /// <summary>The day a session is named for, or the day of the device's clock.</summary>
    public static LocalDate DayOf(JournalEntry entry, DateTimeZone zone) =>
        entry.SessionId is { Length: >= 10 } id && LocalDatePattern.Iso.Parse(id[..10]) is { Success: true } day
            ? day.Value
            : entry.MadeAt.InZone(zone).Date;

    private static IEnumerable<(JournalEntry Entry, SetEntry Set)> Words(IEnumerable<JournalEntry> entries) =>
        JournalReading
            .LatestFirst(entries.Where(e => e.Kind == EntryKinds.Set && e.AthleteId is not null))
            .Select(e => (e, JournalReading.Read<SetEntry>(e)!))
            .Where(s => s.Item2 is not null);

    /// <summary>Whether it hurt in a new place at that exercise or at rest; a test stops wherever it was said.</summary>
    private static bool IsNewPlace((JournalEntry Entry, PainEntry Pain)[] pains, string session, SetEntry set) =>
        pains.Any(p =>
            p.Entry.SessionId == session
            && p.Pain.SiteNew
            && (set.Test is not null || p.Pain.Exercise is null || p.Pain.Exercise == set.Exercise)
        );

    /// <summary>The mean of what was typed at the sets from the highest drop, which the row is named for; null where nothing was.</summary>
    private static double? Mean(IEnumerable<(JournalEntry Entry, SetEntry Set)> sets, Func<SetEntry, double?> typed)
    {
        double? highest = sets.Max(s => s.Set.DropHeightM);
        return sets.Where(s => s.Set.DropHeightM == highest).Average(s => typed(s.Set));
    }

    private static double? Worst(
        (JournalEntry Entry, PainEntry Pain)[] pains,
        string? session,
        string when,
        string exercise
    ) =>
        pains
            .Where(p => p.Entry.SessionId == session && p.Pain.When == when)
            .Where(p => p.Pain.Exercise is null || p.Pain.Exercise == exercise)
            .Select(p => p.Pain.Score)
            .Max();

    private static double? Higher(double? a, double? b) =>
        a is null ? b
        : b is null ? a
        : Math.Max(a.Value, b.Value);
}
