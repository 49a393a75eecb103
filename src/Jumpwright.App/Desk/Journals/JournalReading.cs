using System.Collections.Immutable;
using System.Text.Json;
using Jumpwright.Athletes;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Storage.Stores;
using Jumpwright.Trials;
using NodaTime;

namespace Jumpwright.App.Desk.Journals;

/// <summary>What the journal adds to what the folder says: sets done, pain, and trials whose events somebody set.</summary>
internal static class JournalReading
{
    /// <summary>The entry's words, or null where they are of another shape.</summary>
    public static T? Read<T>(JournalEntry entry)
        where T : class
    {
        try
        {
            return JsonSerializer.Deserialize<T>(entry.Json);
        }
        catch (JsonException)
        {
            return null;
        }
    }

    /// <summary>Later in time first; of two at one time the greater id, so that every machine decides alike.</summary>
    public static IEnumerable<JournalEntry> LatestFirst(IEnumerable<JournalEntry> entries) =>
        entries.OrderByDescending(e => e.MadeAt).ThenByDescending(e => e.Id, StringComparer.Ordinal);

    /// <summary>An athlete's history with the journal's entries about them.</summary>
    public static History Of(History history, IReadOnlyCollection<JournalEntry> theirs, DateTimeZone zone)
    {
        if (theirs.Count == 0)
        {
            return history;
        }

        theirs = PainPlaces.Filled(WithdrawnPain.Without(theirs, zone));

        ImmutableArray<CompletedItem> done = SetsDone.Merge(history.Completed, theirs, zone);
        ImmutableArray<SymptomReport> felt =
        [
            .. history.Symptoms,
            .. theirs
                .Where(e => e.Kind == EntryKinds.Pain)
                .Select(e => (Entry: e, Pain: Read<PainEntry>(e)))
                // What no logged set carries must close by itself: a pain without a place is no pain without a rule.
                .Where(p =>
                    p.Pain is { } pain
                    && (
                        pain.Site is not null
                        || IsNewPlace(theirs, p.Entry, pain)
                        || (pain.Score > 0 && !SetsDone.Carry(theirs, p.Entry, pain))
                    )
                )
                .Select(p => new SymptomReport(
                    history.Athlete.Id,
                    SetsDone.DayOf(p.Entry, zone),
                    p.Pain!.Site ?? PainEntry.PlaceNotSaid,
                    Sides.Read(p.Pain.Side),
                    null,
                    null,
                    "pain",
                    p.Pain.When,
                    p.Pain.Score,
                    null
                )
                {
                    WrittenAt = p.Entry.MadeAt,
                }),
            .. SignsIn(theirs, zone).Where(s => s.TakenBackBy is null).Select(s => SignOf(s.Entry, zone)),
        ];
        return history with
        {
            Athlete = BodyEntry.Latest(
                history.Athlete,
                LatestFirst(theirs.Where(e => e.Kind == EntryKinds.Body))
                    .Reverse()
                    .Select(Read<BodyEntry>)
                    .OfType<BodyEntry>()
            ),
            Completed = done,
            // Whoever wrote a row of it into completed.csv looked back on it and knows how much it was.
            PossiblyDone =
            [
                .. BrokenOff
                    .Of(theirs, zone)
                    .Where(p =>
                        !history.Completed.Any(c =>
                            c.Date == p.Date
                            && c.ExerciseId == p.ExerciseId
                            && (c.SessionId == p.SessionId || c.SessionId.Length == 0)
                        )
                    ),
            ],
            Symptoms = felt,
            Restrictions =
            [
                .. history.Restrictions,
                .. RestrictionsIn(theirs, zone)
                    .Where(r => r.TakenBackBy is null)
                    .Select(r => r.Said.Of(history.Athlete.Id) with { WrittenAt = r.Entry.MadeAt }),
            ],
        };
    }

    /// <summary>
    /// Restrictions written in the pages, in their order, and who says on that very day that one was written wrongly: a limit on somebody's
    /// health is never loosened from a page later.
    /// </summary>
    public static IEnumerable<(JournalEntry Entry, RestrictionEntry Said, string? TakenBackBy)> RestrictionsIn(
        IReadOnlyCollection<JournalEntry> theirs,
        DateTimeZone zone
    )
    {
        Func<JournalEntry, string?> back = BackBy(theirs, EntryKinds.RestrictionTakenBack, zone);
        ILookup<string, LocalDate> ends = theirs
            .Where(e => e.Kind == EntryKinds.RestrictionEnded)
            .Select(Read<RestrictionEndedEntry>)
            .Where(w => w is { Entry: not null, Day: not null })
            .ToLookup(w => w!.Entry, w => w!.Day!.Value, StringComparer.Ordinal);
        return theirs
            .Where(e => e.Kind == EntryKinds.Restriction)
            .Select(e => (e, (Read<RestrictionEntry>(e) ?? NotReadable).EndingOn(ends[e.Id]), back(e)));
    }

    /// <summary>Stop signs written in the pages, in their order, and who says at once that one was written wrongly.</summary>
    public static IEnumerable<(JournalEntry Entry, SignEntry? Said, string? TakenBackBy)> SignsIn(
        IReadOnlyCollection<JournalEntry> theirs,
        DateTimeZone zone
    )
    {
        Func<JournalEntry, string?> back = BackBy(theirs, EntryKinds.SignTakenBack, zone);
        return theirs.Where(e => e.Kind == EntryKinds.Sign).Select(e => (e, Read<SignEntry>(e), back(e)));
    }

    /// <summary>Who took an entry back in time, by name; null where nobody did.</summary>
    private static Func<JournalEntry, string?> BackBy(
        IReadOnlyCollection<JournalEntry> theirs,
        string kind,
        DateTimeZone zone
    )
    {
        ILookup<string, (JournalEntry Entry, string By)> back = theirs
            .Where(e => e.Kind == kind)
            .Select(e => (Entry: e, Word: Read<TakenBackEntry>(e)))
            .Where(b => !string.IsNullOrWhiteSpace(b.Word?.By) && b.Word.Entry is not null)
            .ToLookup(b => b.Word!.Entry, b => (b.Entry, b.Word!.By), StringComparer.Ordinal);
        return entry =>
            back[entry.Id].Where(b => TakingBack.IsInTime(b.Entry, entry, zone)).Select(b => b.By).FirstOrDefault();
    }

    /// <summary>Stands where an entry can't be read: without a name it closes everything.</summary>
    private static RestrictionEntry NotReadable => new("", null, null, null, [], [], null, null, null, null);

    /// <summary>A sign as symptoms.csv would say it; one that nobody knows closes as a kind that can't be understood.</summary>
    private static SymptomReport SignOf(JournalEntry entry, DateTimeZone zone)
    {
        SignEntry? sign = Read<SignEntry>(entry);
        (string kind, string? note) =
            sign is not null && SignEntry.All.TryGetValue(sign.What, out var known)
                ? known
                : (sign?.What ?? "not readable", null);
        return new(
            entry.AthleteId ?? "",
            SetsDone.DayOf(entry, zone),
            sign?.Site ?? "",
            Sides.Read(sign?.Side),
            null,
            null,
            kind,
            null,
            null,
            note
        )
        {
            WrittenAt = entry.MadeAt,
        };
    }

    /// <summary>
    /// Whether it hurt in a new place: that closes by itself, whoever else carries the score. Said without a score it counts as not
    /// known, until somebody says how bad it is.
    /// </summary>
    private static bool IsNewPlace(IReadOnlyCollection<JournalEntry> theirs, JournalEntry entry, PainEntry pain) =>
        pain.SiteNew
        && (
            pain.Score > 0
            || (
                pain.Score is null
                && !theirs.Any(e =>
                    e.Kind == EntryKinds.Pain
                    && e.SessionId == entry.SessionId
                    && e.MadeAt >= entry.MadeAt
                    && Read<PainEntry>(e) is { SiteNew: true, Score: > 0 } scored
                    && scored.When == pain.When
                    && scored.Exercise == pain.Exercise
                )
            )
        );

    /// <summary>Puts the trials that follow a person's hand in the place of the automatic ones.</summary>
    public static (ImmutableArray<MeasuredTrial> Trials, ImmutableArray<CorrectedTrial> Corrected) Correct(
        ImmutableArray<MeasuredTrial> trials,
        IEnumerable<JournalEntry> theirs,
        Func<string, byte[]?> raw
    )
    {
        var last = new Dictionary<(string, int), (JournalEntry Entry, CorrectionEntry Set)>();
        foreach (JournalEntry entry in theirs.Where(e => e.Kind == EntryKinds.Correction))
        {
            if (Read<CorrectionEntry>(entry) is { } set && !set.Events.IsDefault)
            {
                last[(set.Sha256, set.Trial)] = (entry, set);
            }
        }

        if (last.Count == 0)
        {
            return (trials, []);
        }

        var corrected = ImmutableArray.CreateBuilder<CorrectedTrial>();
        var now = trials.ToBuilder();
        for (int i = 0; i < now.Count; i++)
        {
            MeasuredTrial trial = now[i];
            if (!last.TryGetValue((trial.Sha256, trial.Trial.Number), out var word) || word.Set.Events.IsEmpty)
            {
                continue;
            }

            Outcome<Trial> again = Again(trial, word.Set.ForMeasuring(), raw);
            bool followed = again.TryGet(out Trial? set, out Refusal? refusal);
            corrected.Add(
                new CorrectedTrial(
                    trial.Trial,
                    trial.Sha256,
                    word.Set,
                    word.Entry.Who,
                    word.Entry.MadeAt,
                    refusal?.Sentence
                )
            );
            if (followed)
            {
                now[i] = trial with { Trial = set! };
            }
        }

        return (now.ToImmutable(), corrected.ToImmutable());
    }

    /// <summary>Measures a trial again from its kept bytes with some of its events set.</summary>
    public static Outcome<Trial> Again(
        MeasuredTrial trial,
        ImmutableArray<EventCorrection> corrections,
        Func<string, byte[]?> raw
    )
    {
        if (raw(trial.Sha256) is not { } bytes)
        {
            return Refusal.Of($"The recording's bytes are not at hand, so the trial can't be measured again.");
        }

        return Recording
            .From(bytes, trial.Labels)
            .Then(recording =>
                Measuring
                    .Of(recording, trial.Trial.Task, new MeasuringOptions { Corrections = corrections })
                    .Then<Trial>(all =>
                        all.FirstOrDefault(t => t.Number == trial.Trial.Number) is { } same
                            ? same with
                            {
                                Warnings = [.. recording.Warnings.Union(same.Warnings, StringComparer.Ordinal)],
                            }
                            : Refusal.Of($"The recording no longer holds this trial: import the squad again.")
                    )
            );
    }
}
