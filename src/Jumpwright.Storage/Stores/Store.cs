using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Storage.Folders;
using Jumpwright.Storage.Stores.Rows;
using Jumpwright.Trials;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace Jumpwright.Storage.Stores;

/// <summary>The store over SQLite: a file, or memory for tests and for planning straight from a folder.</summary>
public sealed class Store : IStore
{
    private readonly StoreDatabase _database;
    private readonly TimeProvider _clock;

    private Store(StoreDatabase database, TimeProvider clock) => (_database, _clock) = (database, clock);

    /// <summary>The database file; null in memory.</summary>
    public string? DatabaseFile => _database.Path;

    /// <summary>
    /// Opens a store, or makes one where there is no file yet. A file that is no store, or that a newer version wrote, is
    /// refused and left as it is.
    /// </summary>
    /// <param name="path">The database file.</param>
    /// <param name="clock">Tells when an import began and when a plan was kept.</param>
    public static Outcome<Store> Open(string path, TimeProvider clock) =>
        StoreDatabase.AtPath(path).Then<Store>(database => new Store(database, clock));

    /// <summary>A store that is gone with this object.</summary>
    public static Store InMemory(TimeProvider clock) => new(StoreDatabase.InMemory(), clock);

    /// <summary>
    /// A squad from a squad folder or from a store, whichever the path is: what the commands that plan take. A folder is read
    /// and measured afresh, and nothing is written.
    /// </summary>
    public static Outcome<StoredSquad> LoadFrom(
        string path,
        TimeProvider clock,
        Measurer? measure = null,
        IProgress<ImportProgress>? progress = null,
        CancellationToken cancel = default
    )
    {
        if (Directory.Exists(path))
        {
            using Store memory = InMemory(clock);
            return memory.Import(path, measure, progress, cancel).Then(_ => memory.Load());
        }

        if (!File.Exists(path))
        {
            return new Refusal($"There is neither a squad folder nor a store at '{path}': check the path.");
        }

        if (!Open(path, clock).TryGet(out Store? store, out Refusal? refusal))
        {
            return refusal;
        }

        using (store)
        {
            return store.Load();
        }
    }

    public Outcome<ImportReport> Import(
        string folder,
        Measurer? measure = null,
        IProgress<ImportProgress>? progress = null,
        CancellationToken cancel = default
    )
    {
        using ImportLock? one = ImportLock.TryTake(_database.Path);
        if (one is null)
        {
            return StoreRefusals.ImportRunning();
        }

        HashSet<string> before = _database.Read(context =>
            context.Measurements.Select(m => m.Id).ToHashSet(StringComparer.Ordinal)
        );
        return Importing(measure).Import(folder, progress, cancel).Then<ImportReport>(batch => Report(batch, before));
    }

    /// <summary>
    /// Whether the squad's own tables in a folder are those of the last import: all that closes is known then, and only
    /// recordings may be new. It reads no recording, so it takes a moment however many there are.
    /// </summary>
    public bool KnowsTablesOf(string folder) => Importing(null).KnowsTables(folder);

    /// <summary>Whether an import of the folder would change nothing; every recording of it is read.</summary>
    public bool HasTaken(string folder, CancellationToken cancel) => Importing(null).IsTaken(folder, cancel);

    public Outcome<StoredSquad> Load() =>
        _database.Plain<Outcome<StoredSquad>>(
            (plain, context) =>
                Outlining.Read(plain, context) is { } outline
                    ? new StoredSquad(
                        outline.Squad,
                        [.. outline.Bare.Select(h => h with { Trials = TrialQueries.Of(plain, h.Athlete.Id) })],
                        RecordingQueries.All(context()),
                        outline.Problems
                    )
                    : StoreRefusals.Empty()
        );

    /// <summary>The squad as the last import left it, without its trials; or one sentence if nothing was imported yet.</summary>
    public Outcome<SquadOutline> Outline() =>
        _database.Plain<Outcome<SquadOutline>>(
            (plain, context) => Outlining.Read(plain, context) is { } outline ? outline : StoreRefusals.Empty()
        );

    /// <summary>How many trials that count lie after a day, and the last day among them.</summary>
    public (int Trials, LocalDate? Last) TrialsAfter(LocalDate day) =>
        _database.Plain((plain, _) => Outlining.After(plain, day));

    /// <summary>Whose trials a recording holds; nobody's when it counts nowhere.</summary>
    public ImmutableArray<string> OwnersOf(string sha256) =>
        _database.Plain((plain, _) => Outlining.OwnersOf(plain, sha256));

    /// <summary>
    /// One text an athlete that changes when their recordings change, their names, what was measured of them, or their order.
    /// </summary>
    public ImmutableDictionary<string, string> Contents() => _database.Plain((plain, _) => Outlining.Contents(plain));

    public ImmutableArray<StoredRecording> Recordings() => _database.Read(RecordingQueries.All);

    public ImmutableArray<MeasuredTrial> TrialsOf(string athleteId) =>
        _database.Plain((plain, _) => TrialQueries.Of(plain, athleteId));

    /// <summary>What was measured from recordings, by file, whoever's they are; what was refused has no trials.</summary>
    public ImmutableDictionary<string, ImmutableArray<Trial>> TrialsIn(IReadOnlyCollection<string> files) =>
        _database.Read(context => RecordingQueries.TrialsIn(context, files));

    public Outcome<ReadOnlyMemory<byte>> RawBytes(string sha256) =>
        _database.Plain<Outcome<ReadOnlyMemory<byte>>>(
            (plain, _) =>
            {
                RawRow? row = RawQueries.Find(plain, sha256);
                if (row is null)
                {
                    return StoreRefusals.NoRaw(sha256);
                }

                byte[]? bytes = Stores.RawBytes.Unpack(row);
                return bytes is null ? StoreRefusals.Damaged(sha256) : new ReadOnlyMemory<byte>(bytes);
            }
        );

    public Outcome<RemeasureReport> Remeasure(
        Measurer? measure = null,
        IProgress<ImportProgress>? progress = null,
        bool apply = false,
        CancellationToken cancel = default
    )
    {
        Measurer again = measure ?? MeasuredRecording.ByCore;
        (RecordingRow Recording, MeasurementRow Stored)[] all = _database.Read(context =>
        {
            Dictionary<string, MeasurementRow> stored = RecordingQueries.Measurements(context);
            return context
                .Recordings.Where(r => r.MeasurementId != null)
                .OrderBy(r => r.Position)
                .AsEnumerable()
                .Select(r => (r, stored[r.MeasurementId!]))
                .ToArray();
        });
        if (all.Length == 0)
        {
            return StoreRefusals.Empty();
        }

        var changes = new List<RemeasureChange>();
        var tally = new RemeasureTally();
        int unchanged = 0;
        for (int i = 0; i < all.Length; i++)
        {
            cancel.ThrowIfCancellationRequested();
            (RecordingRow recording, MeasurementRow stored) = all[i];
            if (!RawBytes(stored.Sha256).TryGet(out ReadOnlyMemory<byte> bytes, out Refusal? damaged))
            {
                return damaged;
            }

            MeasuredRecording now = again(bytes, MeasurementIds.Labels(stored.Manifest));
            ImmutableArray<RemeasureChange> found = Remeasurer.Compare(recording.File, stored, now, tally);
            bool kindNotKept =
                stored is { Refusal: not null, RefusedFor: null }
                && !now.Trials.TryGet(out _, out Refusal? why)
                && why.Kind() is not null;
            if (apply && (!found.IsEmpty || kindNotKept || stored.Version != ProductVersion.Current))
            {
                _database.Write(context => Remeasurer.Replace(context, recording.File, stored, now));
            }

            unchanged += found.IsEmpty ? 1 : 0;
            changes.AddRange(found);
            progress?.Report(new ImportProgress(i + 1, all.Length, recording.File));
        }

        return new RemeasureReport(
            [.. all.Select(a => a.Stored.Version).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)],
            ProductVersion.Current,
            all.Length,
            unchanged,
            tally.Measures(),
            apply,
            [.. changes]
        );
    }

    public StoredPlan KeepPlan(LocalDate from, int weeks, string json) =>
        _database.Write(context =>
        {
            PlanRow? same = context
                .Plans.Where(p => p.From == from && p.Weeks == weeks)
                .OrderByDescending(p => p.Number)
                .FirstOrDefault();
            if (same?.Json != json)
            {
                same = new PlanRow
                {
                    Number = (context.Plans.Max(p => (int?)p.Number) ?? 0) + 1,
                    From = from,
                    Weeks = weeks,
                    SavedAt = Instant.FromDateTimeOffset(_clock.GetUtcNow()),
                    Json = json,
                };
                context.Plans.Add(same);
            }

            return ToPlan(same);
        });

    public StoredPlan? LatestPlan() =>
        _database.Read(context =>
            context.Plans.OrderByDescending(p => p.Number).FirstOrDefault() is { } last ? ToPlan(last) : null
        );

    public ImmutableArray<StoredPlan> Plans() =>
        _database.Read(context =>
            context.Plans.OrderByDescending(p => p.Number).AsEnumerable().Select(ToPlan).ToImmutableArray()
        );

    public JournalReceipt Append(IReadOnlyList<JournalEntry> entries) =>
        _database.Write(context =>
            Stores.Journal.Append(context, entries, Instant.FromDateTimeOffset(_clock.GetUtcNow()))
        );

    public ImmutableArray<JournalEntry> Journal() => _database.Plain((plain, _) => Stores.Journal.All(plain));

    public ImmutableArray<string> Check() => _database.Read(Integrity.Check);

    public Outcome<int> Export(string folder) => _database.Read(context => Exporter.Export(context, folder));

    public Outcome<ErasureReport> Erase(string athleteId)
    {
        using ImportLock? one = ImportLock.TryTake(_database.Path);
        if (one is null)
        {
            return StoreRefusals.ImportRunning();
        }

        Outcome<ErasureReport> erased = _database.Write(context => Eraser.Erase(context, athleteId));
        if (erased.TryGet(out _, out _))
        {
            _database.Compact();
        }

        return erased;
    }

    /// <summary>Copies the whole store into a new file, as of one moment, while others read and write.</summary>
    public void CopyTo(string path) => _database.CopyTo(path);

    public void Dispose() => _database.Dispose();

    internal T Inspect<T>(Func<StoreContext, T> look) => _database.Read(look);

    private Importer Importing(Measurer? measure) => new(_database, _clock, measure ?? MeasuredRecording.ByCore);

    private ImportReport Report(int batch, HashSet<string> before) =>
        _database.Read(context =>
        {
            ImmutableArray<StoredRecording> recordings = RecordingQueries.All(context);
            int known = context
                .Recordings.Where(r => r.MeasurementId != null)
                .Select(r => r.MeasurementId!)
                .AsEnumerable()
                .Count(before.Contains);
            return new ImportReport(
                batch,
                recordings.Length,
                recordings.Count(r => r.Refusal is null),
                known,
                [.. recordings.Where(r => r.Refusal is not null)],
                SquadRows.Problems(context)
            );
        });

    private static StoredPlan ToPlan(PlanRow row) => new(row.Number, row.From, row.Weeks, row.SavedAt, row.Json);
}
