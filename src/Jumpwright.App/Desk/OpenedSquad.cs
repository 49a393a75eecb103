using System.Collections.Immutable;
using Jumpwright.App.Desk.Journals;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Quantities;
using Jumpwright.Storage.Stores;
using NodaTime;

namespace Jumpwright.App.Desk;

/// <summary>A squad folder or a store, opened for as long as its recordings are wanted.</summary>
public sealed class OpenedSquad : IDisposable
{
    /// <summary>The store that the pages keep inside a squad folder.</summary>
    public const string StoreInFolder = "jumpwright.db";

    private readonly Store _store;
    private readonly Lock _one = new();
    private StoredSquad _stored;

    private OpenedSquad(Store store, StoredSquad stored, string? folder)
    {
        _store = store;
        _stored = stored;
        Folder = folder;
        Entries = store.Journal();
        Material = Read(null, null);
    }

    /// <summary>The squad folder; null when a store was opened by itself.</summary>
    public string? Folder { get; }

    /// <summary>What is known now.</summary>
    public SquadMaterial Material { get; private set; }

    /// <summary>The journal, in the order in which it came in.</summary>
    public ImmutableArray<JournalEntry> Entries { get; private set; }

    /// <summary>All recordings, refused ones included.</summary>
    public ImmutableArray<StoredRecording> Recordings => _stored.Recordings;

    internal Store Store => _store;

    /// <summary>
    /// Opens a squad folder or a store, whichever the path is. A folder in which the pages keep a store is taken in by it, so
    /// that what was written in the pages counts; any other folder is measured afresh and nothing is written.
    /// </summary>
    public static Outcome<OpenedSquad> At(string path, IProgress<ImportProgress>? progress, CancellationToken cancel)
    {
        string inside = Path.Combine(path, StoreInFolder);
        return !Directory.Exists(path) ? Store.Open(path, TimeProvider.System).Then(store => Load(store, null))
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

    /// <summary>Writes to the journal; what is known follows. Once this returns, the entries are on the disk.</summary>
    internal JournalReceipt Append(IReadOnlyList<JournalEntry> entries)
    {
        JournalReceipt receipt = _store.Append(entries);
        if (receipt.Added.Length > 0)
        {
            HashSet<string> added = [.. receipt.Added];
            JournalEntry[] fresh = [.. entries.DistinctBy(e => e.Id).Where(e => added.Contains(e.Id))];
            Entries = Entries.AddRange(fresh);
            HashSet<string?> touched = [.. fresh.Select(e => e.AthleteId)];
            Material = Read(Material, touched);
        }

        return receipt;
    }

    /// <summary>Takes the folder in again and reads everything anew.</summary>
    internal Outcome<ImportReport> ImportAgain(IProgress<ImportProgress>? progress, CancellationToken cancel)
    {
        if (Folder is null)
        {
            return new Refusal("A store was opened by itself: serve the squad folder to take in recordings.");
        }

        return _store
            .Import(Folder, null, progress, cancel)
            .Then(report =>
                _store
                    .Load()
                    .Then<ImportReport>(stored =>
                    {
                        _stored = stored;
                        Material = Read(null, null);
                        return report;
                    })
            );
    }

    /// <summary>Reads everything anew, after something was removed.</summary>
    internal Outcome<bool> Reload() =>
        _store
            .Load()
            .Then<bool>(stored =>
            {
                _stored = stored;
                Entries = _store.Journal();
                Material = Read(null, null);
                return true;
            });

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
            return Load(store, folder);
        }

        store.Dispose();
        return refusal;
    }

    private static Outcome<OpenedSquad> Load(Store store, string? folder)
    {
        if (store.Load().TryGet(out StoredSquad? squad, out Refusal? refusal))
        {
            return new OpenedSquad(store, squad, folder);
        }

        store.Dispose();
        return refusal;
    }

    /// <summary>All that is known: the folder's word, then the journal's. Of those who were not touched it stays as it was.</summary>
    private SquadMaterial Read(SquadMaterial? before, HashSet<string?>? touched)
    {
        DateTimeZone zone = DateTimeZoneProviders.Tzdb.GetZoneOrNull(_stored.Squad.TimeZone) ?? DateTimeZone.Utc;
        ILookup<string, JournalEntry> entries = Entries
            .Where(e => e.AthleteId is not null)
            .ToLookup(e => e.AthleteId!, StringComparer.Ordinal);
        var histories = ImmutableArray.CreateBuilder<History>(_stored.Histories.Length);
        var corrected = ImmutableArray.CreateBuilder<CorrectedTrial>();
        for (int i = 0; i < _stored.Histories.Length; i++)
        {
            History written = _stored.Histories[i];
            string id = written.Athlete.Id;
            if (before is not null && touched is not null && !touched.Contains(id))
            {
                histories.Add(before.Histories[i]);
                corrected.AddRange(before.Corrected.Where(c => written.Trials.Any(t => t.Sha256 == c.Sha256)));
                continue;
            }

            JournalEntry[] theirs = [.. entries[id]];
            (ImmutableArray<MeasuredTrial> trials, ImmutableArray<CorrectedTrial> set) = JournalReading.Correct(
                written.Trials,
                theirs,
                Raw
            );
            corrected.AddRange(set);
            histories.Add(_stored.Squad.Under(JournalReading.Of(written with { Trials = trials }, theirs, zone)));
        }

        OwnExercises own = OwnExercises.Join(Catalogue.Standard, _stored.Squad.ExerciseFiles);
        return new SquadMaterial(
            _stored.Squad,
            histories.MoveToImmutable(),
            [
                .. _stored
                    .Recordings.Where(r => r.Refusal is not null)
                    .Select(r => new RefusedRecording(r.File, r.Labels.Athlete, r.Refusal!.Sentence)),
            ],
            [.. _stored.Problems.Select(p => p.Sentence), .. own.Remarks],
            [.. _stored.StopsPlanning.Select(p => p.Sentence)],
            Raw,
            corrected.ToImmutable()
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
}
