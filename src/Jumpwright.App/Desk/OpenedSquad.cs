using System.Collections.Immutable;
using Jumpwright.App.Desk.Journals;
using Jumpwright.App.Desk.Keeping;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Quantities;
using Jumpwright.Storage.Stores;
using Jumpwright.Trials;
using NodaTime;

namespace Jumpwright.App.Desk;

/// <summary>A squad folder or a store, opened for as long as its recordings are wanted.</summary>
public sealed class OpenedSquad : IDisposable
{
    /// <summary>The store that the pages keep inside a squad folder.</summary>
    public const string StoreInFolder = "jumpwright.db";

    private readonly Store _store;
    private readonly Lock _one = new();
    private SquadOutline _outline;
    private RecordedTrials _recorded;
    private Once<Recorded> _recordings;

    private OpenedSquad(Store store, SquadOutline outline, string? folder, bool isBehind)
    {
        _store = store;
        _outline = outline;
        _recorded = new RecordedTrials(store);
        _recordings = new Once<Recorded>(ReadRecordings);
        Folder = folder;
        IsBehind = isBehind;
        Entries = store.Journal();
        Material = Read(null, (_, _, _) => null);
    }

    /// <summary>The squad folder; null when a store was opened by itself.</summary>
    public string? Folder { get; }

    /// <summary>
    /// Whether the folder's recordings were not looked through yet. Its tables were: what closes is known.
    /// </summary>
    public bool IsBehind { get; private set; }

    /// <summary>What is known now.</summary>
    public SquadMaterial Material { get; private set; }

    /// <summary>The journal, in the order in which it came in.</summary>
    public ImmutableArray<JournalEntry> Entries { get; private set; }

    /// <summary>All recordings, refused ones included.</summary>
    public ImmutableArray<StoredRecording> Recordings => _recordings.Value.All;

    /// <summary>Recordings that are refused, or measured and of nobody, or of no day.</summary>
    public ImmutableArray<StoredRecording> Unclear => _recordings.Value.Unclear;

    /// <summary>What was measured from recordings, by file, whoever's they are.</summary>
    internal ImmutableDictionary<string, ImmutableArray<Trial>> TrialsIn(IReadOnlyCollection<string> files) =>
        _store.TrialsIn(files);

    internal Store Store => _store;

    /// <summary>
    /// Opens a squad folder or a store, whichever the path is. A folder in which the pages keep a store is taken in by it, so
    /// that what was written in the pages counts; any other folder is measured afresh and nothing is written.
    /// </summary>
    public static Outcome<OpenedSquad> At(string path, IProgress<ImportProgress>? progress, CancellationToken cancel)
    {
        string inside = Path.Combine(path, StoreInFolder);
        return !Directory.Exists(path)
                ? Store.Open(path, TimeProvider.System).Then(store => Load(store, null, isBehind: false))
            : File.Exists(inside) ? Kept(path, inside, progress, cancel)
            : Import(Store.InMemory(TimeProvider.System), path, progress, cancel);
    }

    /// <summary>Opens a squad folder with a store that is kept, by default inside it; a store by itself as it is.</summary>
    public static Outcome<OpenedSquad> Kept(
        string path,
        string? storeFile,
        IProgress<ImportProgress>? progress,
        CancellationToken cancel
    ) =>
        Directory.Exists(path)
            ? Store
                .Open(storeFile ?? Path.Combine(path, StoreInFolder), TimeProvider.System)
                .Then(store => Import(store, path, progress, cancel))
            : At(path, progress, cancel);

    /// <summary>
    /// The same without reading a recording, where the folder's tables are those of the last import: for pages that are to stand
    /// at once. <see cref="LookThrough"/> then finds what is new among the recordings.
    /// </summary>
    public static Outcome<OpenedSquad> AtOnce(
        string path,
        IProgress<ImportProgress>? progress,
        CancellationToken cancel
    )
    {
        string inside = Path.Combine(path, StoreInFolder);
        // Read on another core meanwhile: whoever asks first below waits for the rest of it only.
        _ = Task.Run(() => Catalogue.Standard, cancel);
        return Directory.Exists(path) && File.Exists(inside)
            ? Store
                .Open(inside, TimeProvider.System)
                .Then(store =>
                    store.KnowsTablesOf(path)
                        ? Load(store, path, isBehind: true)
                        : Import(store, path, progress, cancel)
                )
            : Kept(path, null, progress, cancel);
    }

    /// <summary>
    /// Whether something among the folder's recordings is new or gone, so that it has to be taken in again. Every recording is
    /// read, and nothing is written.
    /// </summary>
    internal bool LookThrough(CancellationToken cancel)
    {
        bool same = Folder is null || _store.HasTaken(Folder, cancel);
        IsBehind &= !same;
        return !same;
    }

    /// <summary>Writes to the journal; what is known follows. Once this returns, the entries are on the disk.</summary>
    internal JournalReceipt Append(IReadOnlyList<JournalEntry> entries)
    {
        JournalReceipt receipt = _store.Append(entries);
        if (receipt.Added.Length > 0)
        {
            HashSet<string> added = [.. receipt.Added];
            JournalEntry[] fresh = [.. entries.DistinctBy(e => e.Id).Where(e => added.Contains(e.Id))];
            Entries = Entries.AddRange(fresh);
            ILookup<string?, JournalEntry> touched = fresh.ToLookup(e => e.AthleteId);
            Material = Read(
                Material,
                (before, written, theirs) =>
                    !touched.Contains(written.Athlete.Id) ? before
                    : touched[written.Athlete.Id].Any(e => e.Kind == EntryKinds.Correction)
                        ? before.CorrectedBy(written, theirs, Zone, Raw)
                    : before.With(written, theirs, Zone)
            );
        }

        return receipt;
    }

    /// <summary>Keeps a plan, so that it is there again when the squad is opened again.</summary>
    internal void Keep(PlannedWeek week) =>
        _store.KeepPlan(week.Request.From, week.Request.Weeks, KeptWeek.Of(week).Write());

    /// <summary>The plan that was kept last, where it holds the day; null where it doesn't.</summary>
    internal StoredPlan? KeptFor(LocalDate day) =>
        _store.LatestPlan() is { } last && last.From <= day && day < last.From.PlusWeeks(last.Weeks) ? last : null;

    /// <summary>Takes the folder in again; only whom that changes is read anew.</summary>
    internal Outcome<ImportReport> ImportAgain(IProgress<ImportProgress>? progress, CancellationToken cancel)
    {
        if (Folder is null)
        {
            return Refusal.Of($"A store was opened by itself: serve the squad folder to take in recordings.");
        }

        var had = new Contents(_store.Contents());
        return _store
            .Import(Folder, null, progress, cancel)
            .Then(report =>
                Renew(had)
                    .Then<ImportReport>(_ =>
                    {
                        IsBehind = false;
                        return report;
                    })
            );
    }

    /// <summary>Reads everything anew, after something was removed.</summary>
    internal Outcome<bool> Reload()
    {
        Entries = _store.Journal();
        return Renew(null);
    }

    public void Dispose() => _store.Dispose();

    private static Outcome<OpenedSquad> Import(
        Store store,
        string folder,
        IProgress<ImportProgress>? progress,
        CancellationToken cancel
    )
    {
        if (store.Import(folder, null, progress, cancel).TryGet(out _, out Refusal? refusal))
        {
            return Load(store, folder, isBehind: false);
        }

        store.Dispose();
        return refusal;
    }

    private static Outcome<OpenedSquad> Load(Store store, string? folder, bool isBehind)
    {
        if (store.Outline().TryGet(out SquadOutline? outline, out Refusal? refusal))
        {
            return new OpenedSquad(store, outline, folder, isBehind);
        }

        store.Dispose();
        return refusal;
    }

    private Outcome<bool> Renew(Contents? had) =>
        _store
            .Outline()
            .Then<bool>(outline =>
            {
                Contents? has = had is null ? null : new Contents(_store.Contents());
                _outline = outline;
                _recorded = new RecordedTrials(_store);
                _recordings = new Once<Recorded>(ReadRecordings);
                Material = Read(
                    Material,
                    (before, written, theirs) =>
                        has is null || !has.SameTrials(had!, written.Athlete.Id) ? null
                        : Contents.SameTables(written, before.Written) ? before
                        : before.With(written, theirs, Zone)
                );
                return true;
            });

    private DateTimeZone Zone => SquadZone.Of(_outline.Squad.TimeZone);

    /// <summary>All that is known: the folder's word, then the journal's.</summary>
    /// <param name="before">What was known before.</param>
    /// <param name="keep">An athlete's dossier that can stay, in part or whole; null when their trials are to be read anew.</param>
    private SquadMaterial Read(SquadMaterial? before, Func<Dossier, History, JournalEntry[], Dossier?> keep)
    {
        ILookup<string, JournalEntry> entries = Entries
            .Where(e => e.AthleteId is not null)
            .ToLookup(e => e.AthleteId!, StringComparer.Ordinal);
        Dictionary<string, Dossier> had =
            before?.Dossiers.ToDictionary(d => d.Athlete.Id, StringComparer.Ordinal) ?? [];
        ImmutableArray<Dossier> dossiers =
        [
            .. _outline.Bare.Select(bare =>
            {
                History written = _outline.Squad.Under(bare);
                JournalEntry[] theirs = [.. entries[written.Athlete.Id]];
                return (
                        had.GetValueOrDefault(written.Athlete.Id) is { } dossier ? keep(dossier, written, theirs) : null
                    ) ?? Dossier.Of(written, theirs, Zone, _store.TrialsOf, Raw);
            }),
        ];
        OwnExercises own = OwnExercises.Join(Catalogue.Standard, _outline.Squad.ExerciseFiles);
        return new SquadMaterial(
            _outline.Squad,
            dossiers,
            [.. _outline.Refused.Select(r => new RefusedRecording(r.File, r.AthleteId, r.Sentence, r.For))],
            [.. _outline.Problems.Select(p => p.Sentence), .. own.Remarks],
            [.. _outline.StopsPlanning.Select(p => p.Sentence)],
            Raw,
            _recorded
        )
        {
            Catalogue = own.Catalogue,
        };
    }

    private byte[]? Raw(string sha256)
    {
        lock (_one)
        {
            return _store.RawBytes(sha256).TryGet(out ReadOnlyMemory<byte> bytes, out _) ? bytes.ToArray() : null;
        }
    }

    private Recorded ReadRecordings()
    {
        ImmutableArray<StoredRecording> all = _store.Recordings();
        HashSet<string> squad = [.. _outline.Bare.Select(h => h.Athlete.Id)];
        return new Recorded(
            all,
            [
                .. all.Where(r =>
                    r.Refusal is not null
                    || r.Labels.Date is null
                    || r.Labels.Athlete is null
                    || !squad.Contains(r.Labels.Athlete)
                ),
            ]
        );
    }

    private sealed record Recorded(ImmutableArray<StoredRecording> All, ImmutableArray<StoredRecording> Unclear);
}
