using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Storage.Folders;
using Jumpwright.Storage.Stores.Rows;
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
        var importer = new Importer(_database, _clock, measure ?? MeasuredRecording.ByCore);
        return importer.Import(folder, progress, cancel).Then<ImportReport>(batch => Report(batch, before));
    }

    public Outcome<StoredSquad> Load() =>
        _database.Read<Outcome<StoredSquad>>(context =>
            SquadRows.Squad(context) is { } squad ? LoadSquad(context, squad) : StoreRefusals.Empty()
        );

    public ImmutableArray<StoredRecording> Recordings() => _database.Read(RecordingQueries.All);

    public ImmutableArray<MeasuredTrial> TrialsOf(string athleteId) =>
        _database.Read(context => RecordingQueries.Trials(context, athleteId).Trials);

    public Outcome<ReadOnlyMemory<byte>> RawBytes(string sha256) =>
        _database.Read<Outcome<ReadOnlyMemory<byte>>>(context =>
        {
            RawRow? row = context.Raw.SingleOrDefault(r => r.Sha256 == sha256);
            if (row is null)
            {
                return StoreRefusals.NoRaw(sha256);
            }

            byte[]? bytes = Stores.RawBytes.Unpack(row);
            return bytes is null ? StoreRefusals.Damaged(sha256) : new ReadOnlyMemory<byte>(bytes);
        });

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
            if (apply && (!found.IsEmpty || stored.Version != ProductVersion.Current))
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

    public ImmutableArray<StoredPlan> Plans() =>
        _database.Read(context =>
            context.Plans.OrderByDescending(p => p.Number).AsEnumerable().Select(ToPlan).ToImmutableArray()
        );

    public JournalReceipt Append(IReadOnlyList<JournalEntry> entries) =>
        _database.Write(context =>
            Stores.Journal.Append(context, entries, Instant.FromDateTimeOffset(_clock.GetUtcNow()))
        );

    public ImmutableArray<JournalEntry> Journal() => _database.Read(Stores.Journal.All);

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

    private static StoredSquad LoadSquad(StoreContext context, Squad squad)
    {
        (ImmutableArray<MeasuredTrial> trials, ImmutableArray<FolderProblem> strays) = RecordingQueries.Trials(context);
        ILookup<string, MeasuredTrial> trialsOf = trials.ToLookup(t => t.AthleteId, StringComparer.Ordinal);
        ILookup<string, ScreenResult> screensOf = context
            .Screens.OrderBy(r => r.Position)
            .AsEnumerable()
            .Select(SquadRows.ToScreen)
            .ToLookup(s => s.AthleteId, StringComparer.Ordinal);
        ILookup<string, SymptomReport> symptomsOf = context
            .Symptoms.OrderBy(r => r.Position)
            .AsEnumerable()
            .Select(SquadRows.ToSymptom)
            .ToLookup(s => s.AthleteId, StringComparer.Ordinal);
        ILookup<string, Restriction> restrictionsOf = context
            .Restrictions.OrderBy(r => r.Position)
            .AsEnumerable()
            .Select(SquadRows.ToRestriction)
            .ToLookup(s => s.AthleteId, StringComparer.Ordinal);
        // Overrides, own exercises, counted practices, surfaces, weather and sets stand in no row of their own: the kept files say them.
        SquadFolder? kept = KeptFiles.Read(context, squad.Name);
        if (kept is not null)
        {
            squad = squad with
            {
                Overrides = kept.Squad.Overrides,
                ExerciseFiles = kept.Squad.ExerciseFiles,
                Practices = kept.Squad.Practices,
                Windows = kept.Squad.Windows,
                Fixtures = kept.Squad.Fixtures,
                Weather = kept.Squad.Weather,
            };
        }

        ILookup<string, CompletedItem> completedOf = (
            kept?.Completed ?? [.. context.Completed.OrderBy(r => r.Position).AsEnumerable().Select(SquadRows.ToItem)]
        ).ToLookup(s => s.AthleteId, StringComparer.Ordinal);
        ImmutableArray<History> histories =
        [
            .. context
                .Athletes.OrderBy(a => a.Position)
                .AsEnumerable()
                .Select(SquadRows.ToAthlete)
                .Select(a => new History(
                    a,
                    [.. trialsOf[a.Id]],
                    [.. screensOf[a.Id]],
                    [.. symptomsOf[a.Id]],
                    [.. restrictionsOf[a.Id]],
                    [.. completedOf[a.Id]]
                )
                {
                    Overrides = squad.OverridesOf(a.Id),
                }),
        ];
        return new StoredSquad(
            squad,
            histories,
            RecordingQueries.All(context),
            [.. SquadRows.Problems(context), .. Unfinished(context), .. Damaged(context, kept), .. strays]
        );
    }

    /// <summary>A tightened limit that can't be read any more must not loosen unseen.</summary>
    private static IEnumerable<FolderProblem> Damaged(StoreContext context, SquadFolder? kept)
    {
        if (kept is null && context.TableFiles.Any(f => !f.Missing))
        {
            yield return new FolderProblem(
                "",
                null,
                ProblemWeight.StopsPlanning,
                "The squad's own files in the store are damaged, so overrides of limits, own exercises and counted practices can't be "
                    + "read: import the squad folder again."
            );
        }
    }

    private static IEnumerable<FolderProblem> Unfinished(StoreContext context)
    {
        if (context.Batches.Any(b => !b.Finished))
        {
            yield return new FolderProblem(
                "",
                null,
                ProblemWeight.LeftOut,
                "The last import was cut short, so some recordings may be missing: import the squad folder again."
            );
        }
    }

    private static StoredPlan ToPlan(PlanRow row) => new(row.Number, row.From, row.Weeks, row.SavedAt, row.Json);
}
