using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using Jumpwright.Athletes;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Storage.Folders;
using Jumpwright.Storage.Stores.Rows;
using Jumpwright.Trials;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace Jumpwright.Storage.Stores;

/// <summary>
/// Takes a squad folder in. Order of writes (docs/store.md): the tables, with what closes, first and in one transaction; then
/// each recording with all its rows in one; last the mark that the import is complete.
/// </summary>
internal sealed class Importer(StoreDatabase database, TimeProvider clock, Measurer measure)
{
    private const string Version = ProductVersion.Current;

    public Outcome<int> Import(string folder, IProgress<ImportProgress>? progress, CancellationToken cancel)
    {
        if (!SquadFolderReader.Open(folder).TryGet(out SquadFiles? opened, out Refusal? refusal))
        {
            return refusal;
        }

        IReadOnlyDictionary<string, ReadOnlyMemory<byte>> files = opened.Bytes;
        SquadFolder squad = opened.Read().Require();
        ImmutableArray<ImportItem> items = Hash(RecordingFolder.ListSquad(folder).Require(), cancel);
        string fingerprint = Fingerprint(files, items);

        if (database.Read(context => Objection(context, squad)) is { } objection)
        {
            return objection;
        }

        if (database.Read(context => FinishedBatch(context, fingerprint)) is { } same)
        {
            progress?.Report(new ImportProgress(items.Length, items.Length, ""));
            return same;
        }

        int batch = database.Write(context => Begin(context, fingerprint, squad, files, items));
        Measure(items, progress, cancel);
        database.Write(context => Finish(context, batch));
        return batch;
    }

    /// <summary>
    /// Whether the squad's own tables in the folder are those of the last import, which was finished by this version: what
    /// closes is known then. It reads no recording.
    /// </summary>
    public bool KnowsTables(string folder)
    {
        if (
            !SquadFolderReader.Open(folder).TryGet(out SquadFiles? opened, out _)
            || opened.Problems.Any(p => p.Weight != ProblemWeight.Note)
        )
        {
            return false;
        }

        return database.Plain(
            (plain, _) =>
            {
                List<string> last = plain.Rows(
                    "SELECT version FROM import_batch WHERE finished ORDER BY number DESC LIMIT 1",
                    r => r.GetString(0)
                );
                List<string> unfinished = plain.Rows(
                    "SELECT version FROM import_batch WHERE NOT finished",
                    r => r.GetString(0)
                );
                Dictionary<string, string> kept = plain
                    .Rows(
                        "SELECT name, sha256 FROM squad_file WHERE NOT missing",
                        r => Tuple.Create(r.GetString(0), r.GetString(1))
                    )
                    .ToDictionary(f => f.Item1, f => f.Item2, StringComparer.Ordinal);
                return last is [Version]
                    && unfinished.Count == 0
                    && kept.Count == opened.Bytes.Count
                    && opened.Bytes.All(f =>
                        kept.GetValueOrDefault(f.Key) is { } sha256 && sha256 == MeasurementIds.Sha256(f.Value.Span)
                    );
            }
        );
    }

    /// <summary>Whether another import would find nothing new: every recording is read and hashed.</summary>
    public bool IsTaken(string folder, CancellationToken cancel) =>
        SquadFolderReader.Open(folder).TryGet(out SquadFiles? opened, out _)
        && RecordingFolder.ListSquad(folder).TryGet(out ImmutableArray<ListedRecording> listed, out _)
        && Fingerprint(opened.Bytes, Hash(listed, cancel)) is var fingerprint
        && database.Plain(
            (plain, _) =>
                plain.Rows(
                    """
                    SELECT fingerprint FROM import_batch WHERE finished AND number = (SELECT MAX(number) FROM import_batch)
                    """,
                    r => r.GetString(0)
                )
        )
            is [var last]
        && last == fingerprint;

    private static ImmutableArray<ImportItem> Hash(ImmutableArray<ListedRecording> listed, CancellationToken cancel)
    {
        var items = new ImportItem[listed.Length];
        var options = new ParallelOptions
        {
            CancellationToken = cancel,
            MaxDegreeOfParallelism = Environment.ProcessorCount,
        };
        Parallel.For(0, listed.Length, options, i => items[i] = Hash(i + 1, listed[i]));
        return [.. items];
    }

    private static ImportItem Hash(int position, ListedRecording listed)
    {
        if (listed.FullPath is null)
        {
            return new ImportItem(position, listed, null, null, listed.Fault);
        }

        try
        {
            using FileStream stream = File.OpenRead(listed.FullPath);
            if (stream.Length > RawBytes.MostBytes)
            {
                Refusal tooLarge = StoreRefusals.TooLarge(listed.File, stream.Length);
                return new ImportItem(position, listed, null, null, tooLarge);
            }

            string sha256 = Convert.ToHexStringLower(SHA256.HashData(stream));
            string id = MeasurementIds.Of(sha256, Version, MeasurementIds.Line(listed.Labels));
            return new ImportItem(position, listed, sha256, id, null);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            Refusal closed = StoreRefusals.CannotRead(listed.File, e.GetType().Name);
            return new ImportItem(position, listed, null, null, closed);
        }
    }

    /// <summary>Everything that the rows of an import depend on, in one number.</summary>
    private static string Fingerprint(
        IReadOnlyDictionary<string, ReadOnlyMemory<byte>> files,
        ImmutableArray<ImportItem> items
    )
    {
        var text = new StringBuilder(Version).Append('\n');
        foreach (string name in files.Keys.Order(StringComparer.Ordinal))
        {
            text.Append(name).Append('\t').Append(MeasurementIds.Sha256(files[name].Span)).Append('\n');
        }

        foreach (ImportItem item in items)
        {
            text.Append(item.Listed.File).Append('\t').Append(item.MeasurementId ?? item.Fault?.Sentence).Append('\n');
        }

        return MeasurementIds.Sha256(Encoding.UTF8.GetBytes(text.ToString()));
    }

    private static Refusal? Objection(StoreContext context, SquadFolder folder)
    {
        string? stored = context.Squads.Select(s => s.Name).SingleOrDefault();
        bool nameIsKnown = folder.Problems.All(p =>
            p.File != SquadTables.Squad || p.Weight != ProblemWeight.StopsPlanning
        );
        return stored is null || !nameIsKnown || stored == folder.Squad.Name
            ? null
            : StoreRefusals.AnotherSquad(stored, folder.Squad.Name);
    }

    private static int? FinishedBatch(StoreContext context, string fingerprint)
    {
        BatchRow? last = context.Batches.OrderByDescending(b => b.Number).FirstOrDefault();
        return last is { Finished: true } && last.Fingerprint == fingerprint ? last.Number : null;
    }

    private int Begin(
        StoreContext context,
        string fingerprint,
        SquadFolder squad,
        IReadOnlyDictionary<string, ReadOnlyMemory<byte>> files,
        ImmutableArray<ImportItem> items
    )
    {
        int batch = BatchNumber(context, fingerprint);
        ImmutableArray<FolderProblem> gone = KeepFiles(context, files);
        SquadRows.Replace(context, squad with { Problems = [.. squad.Problems, .. gone] });

        // Which recordings count is the folder's word, now; those still to be measured follow one by one.
        var listed = items.Select(i => i.Listed.File).ToHashSet(StringComparer.Ordinal);
        var rows = context.Recordings.ToDictionary(r => r.File, StringComparer.Ordinal);
        context.Recordings.RemoveRange(rows.Values.Where(r => !listed.Contains(r.File)));
        HashSet<string> known = context.Measurements.Select(m => m.Id).ToHashSet(StringComparer.Ordinal);
        foreach (ImportItem item in items)
        {
            if (item.MeasurementId is null || known.Contains(item.MeasurementId))
            {
                Point(context, rows.GetValueOrDefault(item.Listed.File), item);
            }
        }

        return batch;
    }

    /// <summary>An import that was cut short is gone on with; its number and its time stay.</summary>
    private int BatchNumber(StoreContext context, string fingerprint)
    {
        BatchRow? last = context.Batches.OrderByDescending(b => b.Number).FirstOrDefault();
        if (last is { Finished: false })
        {
            if (last.Fingerprint != fingerprint)
            {
                last.Fingerprint = fingerprint;
                last.StartedAt = Now();
            }

            last.Version = Version;
            return last.Number;
        }

        var batch = new BatchRow
        {
            Number = (last?.Number ?? 0) + 1,
            Fingerprint = fingerprint,
            Version = Version,
            StartedAt = Now(),
            Finished = false,
        };
        context.Batches.Add(batch);
        return batch.Number;
    }

    private Instant Now() => Instant.FromDateTimeOffset(clock.GetUtcNow());

    /// <summary>
    /// Keeps the squad's own files whole. One that was there before and is gone may have held what forbids, so its absence
    /// stops planning until it is back, if only as a header.
    /// </summary>
    private static ImmutableArray<FolderProblem> KeepFiles(
        StoreContext context,
        IReadOnlyDictionary<string, ReadOnlyMemory<byte>> files
    )
    {
        var rows = context.TableFiles.ToDictionary(f => f.Name, StringComparer.Ordinal);
        foreach ((string name, ReadOnlyMemory<byte> bytes) in files)
        {
            string sha256 = MeasurementIds.Sha256(bytes.Span);
            KeepRaw(context, sha256, () => RawBytes.Pack(bytes, sha256));
            if (rows.TryGetValue(name, out TableFileRow? row))
            {
                row.Sha256 = sha256;
                row.Missing = false;
            }
            else
            {
                context.TableFiles.Add(new TableFileRow { Name = name, Sha256 = sha256 });
            }
        }

        var gone = new ProblemList();
        foreach (TableFileRow row in rows.Values.Where(r => !files.ContainsKey(r.Name)))
        {
            row.Missing = true;
            if (
                row.Name
                    is SquadTables.Symptoms
                        or SquadTables.Restrictions
                        or SquadTables.Completed
                        or SquadTables.Fixtures
                        or SquadTables.Overrides
                || (row.Name == SquadTables.Screens && context.Screens.Any(s => s.Test == FieldTest.Effusion))
            )
            {
                gone.Add(
                    row.Name,
                    null,
                    ProblemWeight.StopsPlanning,
                    "was there at an earlier import and is gone: put it back, or an empty one if nothing of it holds any more. "
                        + "Nothing is planned until then."
                );
            }
        }

        return [.. gone.OrderBy(p => p.File, StringComparer.Ordinal)];
    }

    private static void KeepRaw(StoreContext context, string sha256, Func<RawRow> pack)
    {
        if (context.Raw.Local.All(r => r.Sha256 != sha256) && !context.Raw.Any(r => r.Sha256 == sha256))
        {
            context.Raw.Add(pack());
        }
    }

    private static void Point(StoreContext context, RecordingRow? row, ImportItem item)
    {
        if (row is null)
        {
            row = new RecordingRow { File = item.Listed.File };
            context.Recordings.Add(row);
        }

        row.Position = item.Position;
        row.Sha256 = item.Sha256;
        row.MeasurementId = item.MeasurementId;
        row.Refusal = item.Fault?.Sentence;
        row.RefusedFor = item.Fault?.Kind();
        row.AthleteId = item.Fault is null ? null : item.Listed.Labels?.Athlete;
    }

    /// <summary>Measures on all cores, stores on one.</summary>
    private void Measure(
        ImmutableArray<ImportItem> items,
        IProgress<ImportProgress>? progress,
        CancellationToken cancel
    )
    {
        HashSet<string> known = database.Read(context =>
            context.Measurements.Select(m => m.Id).ToHashSet(StringComparer.Ordinal)
        );
        ImportItem[][] pending = items
            .Where(i => i.MeasurementId is not null && !known.Contains(i.MeasurementId))
            .GroupBy(i => i.MeasurementId, StringComparer.Ordinal)
            .Select(g => g.ToArray())
            .ToArray();
        int done = items.Length - pending.Sum(g => g.Length);
        progress?.Report(new ImportProgress(done, items.Length, ""));

        using var stop = CancellationTokenSource.CreateLinkedTokenSource(cancel);
        using var measured = new BlockingCollection<(
            ImportItem[] Items,
            RawRow? Raw,
            MeasurementRow? Row,
            Refusal? Fault
        )>(boundedCapacity: 2 * Environment.ProcessorCount);
        Task measuring = Task.Run(
            () =>
            {
                try
                {
                    var options = new ParallelOptions
                    {
                        CancellationToken = stop.Token,
                        MaxDegreeOfParallelism = Environment.ProcessorCount,
                    };
                    Parallel.ForEach(
                        Partitioner.Create(pending, EnumerablePartitionerOptions.NoBuffering),
                        options,
                        group => measured.Add(One(group), stop.Token)
                    );
                }
                finally
                {
                    measured.CompleteAdding();
                }
            },
            stop.Token
        );
        try
        {
            foreach (var (group, raw, row, fault) in measured.GetConsumingEnumerable(cancel))
            {
                database.Write(context => Keep(context, group, raw, row, fault));
                done += group.Length;
                progress?.Report(new ImportProgress(done, items.Length, group[^1].Listed.File));
            }

            measuring.GetAwaiter().GetResult();
        }
        finally
        {
            stop.Cancel();
            try
            {
                measuring.Wait(CancellationToken.None);
            }
            catch (AggregateException)
            {
                // What went wrong is thrown above; here only its end is waited for.
            }
        }
    }

    private (ImportItem[] Items, RawRow? Raw, MeasurementRow? Row, Refusal? Fault) One(ImportItem[] group)
    {
        ListedRecording listed = group[0].Listed;
        byte[] bytes;
        try
        {
            bytes = File.ReadAllBytes(listed.FullPath!);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return (group, null, null, StoreRefusals.CannotRead(listed.File, e.GetType().Name));
        }

        string sha256 = MeasurementIds.Sha256(bytes);
        if (sha256 != group[0].Sha256)
        {
            return (group, null, null, StoreRefusals.Changed(listed.File));
        }

        MeasuredRecording result = MeasureSafely(listed, bytes);
        string manifest = MeasurementIds.Line(listed.Labels);
        MeasurementRow row = TrialRows.ToRow(group[0].MeasurementId!, sha256, Version, manifest, result);
        return (group, RawBytes.Pack(bytes, sha256), row, null);
    }

    /// <summary>One bad file never stops the others, not even one that finds a fault of ours.</summary>
    private MeasuredRecording MeasureSafely(ListedRecording listed, byte[] bytes)
    {
        try
        {
            MeasuredRecording result = measure(bytes, listed.Labels);
            return result.Device is not null || !result.Trials.TryGet(out _, out _)
                ? result
                : throw new InvalidOperationException("Measured by no device.");
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            Outcome<ImmutableArray<Trial>> fault = StoreRefusals.Fault(listed.File, e.GetType().Name);
            return new MeasuredRecording(listed.Labels ?? RecordingLabels.None, null, fault);
        }
    }

    private static int Keep(StoreContext context, ImportItem[] group, RawRow? raw, MeasurementRow? row, Refusal? fault)
    {
        if (raw is not null && row is not null)
        {
            KeepRaw(context, raw.Sha256, () => raw);
            context.Measurements.Add(row);
        }

        foreach (ImportItem item in group)
        {
            ImportItem kept = fault is null ? item : item with { Sha256 = null, MeasurementId = null, Fault = fault };
            Point(context, context.Recordings.Find(item.Listed.File), kept);
        }

        return group.Length;
    }

    /// <summary>Nothing of this version is kept that no recording points to; older versions stay for comparing.</summary>
    private static int Finish(StoreContext context, int batch)
    {
        context
            .Measurements.Where(m => m.Version == Version && !context.Recordings.Any(r => r.MeasurementId == m.Id))
            .ExecuteDelete();
        context.Batches.Single(b => b.Number == batch).Finished = true;
        return batch;
    }
}
