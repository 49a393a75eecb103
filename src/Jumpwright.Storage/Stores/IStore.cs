using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Quantities;
using NodaTime;

namespace Jumpwright.Storage.Stores;

/// <summary>
/// Where a squad is kept: raw bytes by SHA-256, its tables, and what was measured. One store holds one squad. Raw bytes are
/// never altered; everything measured is derived and can be rebuilt.
/// </summary>
public interface IStore : IDisposable
{
    /// <summary>
    /// Takes a squad folder in. The folder is the truth for tables and for which recordings count; importing it twice changes
    /// nothing. Each recording is stored in one transaction, so a kill at any moment leaves a store that another import
    /// completes to exactly the rows of one clean import.
    /// </summary>
    /// <param name="folder">A squad folder.</param>
    /// <param name="measure">How to measure; null takes the core (<see cref="MeasuredRecording"/>).</param>
    /// <param name="progress">Told after each recording, on the calling thread.</param>
    /// <param name="cancel">Stops between recordings; what is stored stays.</param>
    /// <exception cref="OperationCanceledException">It was cancelled.</exception>
    Outcome<ImportReport> Import(
        string folder,
        Measurer? measure = null,
        IProgress<ImportProgress>? progress = null,
        CancellationToken cancel = default
    );

    /// <summary>The squad as the last import left it, or one sentence if nothing was imported yet.</summary>
    Outcome<StoredSquad> Load();

    /// <summary>All recordings, refused ones included, in the order of contracts §2.</summary>
    ImmutableArray<StoredRecording> Recordings();

    /// <summary>An athlete's trials, by day, then in the folder's order.</summary>
    ImmutableArray<MeasuredTrial> TrialsOf(string athleteId);

    /// <summary>The whole bytes of a recording, checked against their SHA-256.</summary>
    Outcome<ReadOnlyMemory<byte>> RawBytes(string sha256);

    /// <summary>
    /// Measures every recording again from its kept bytes and shows what would change. Unless it is to be applied, nothing is
    /// written. Applied, each recording changes in one transaction, so that a kill leaves every one of them whole and another
    /// run completes it; what an older version measured is kept beside it.
    /// </summary>
    /// <param name="measure">How to measure; null takes the core.</param>
    /// <param name="progress">Told after each recording, on the calling thread.</param>
    /// <param name="apply">Whether it takes effect.</param>
    /// <param name="cancel">Stops between recordings.</param>
    /// <returns>The comparison, or one sentence if kept bytes are damaged or nothing was imported yet.</returns>
    Outcome<RemeasureReport> Remeasure(
        Measurer? measure = null,
        IProgress<ImportProgress>? progress = null,
        bool apply = false,
        CancellationToken cancel = default
    );

    /// <summary>Keeps a plan; the same JSON for the same days is kept once.</summary>
    StoredPlan KeepPlan(LocalDate from, int weeks, string json);

    /// <summary>The plan that was kept last; null when none was.</summary>
    StoredPlan? LatestPlan();

    /// <summary>Kept plans, the newest first.</summary>
    ImmutableArray<StoredPlan> Plans();

    /// <summary>
    /// Writes entries to the end of the journal, all or none. An id that is there already is not written again: the same entry
    /// twice is one entry.
    /// </summary>
    JournalReceipt Append(IReadOnlyList<JournalEntry> entries);

    /// <summary>The journal, in the order in which its entries came in.</summary>
    ImmutableArray<JournalEntry> Journal();

    /// <summary>Looks whether the store still holds what it took; no sentence means that it does.</summary>
    ImmutableArray<string> Check();

    /// <summary>Writes the squad folder out again: its files and recordings byte for byte.</summary>
    /// <param name="folder">An empty folder, or one that does not exist yet.</param>
    /// <returns>How many files were written.</returns>
    Outcome<int> Export(string folder);

    /// <summary>Removes an athlete: rows, recordings with their bytes, and kept plans that name them. It can't be undone.</summary>
    Outcome<ErasureReport> Erase(string athleteId);
}
