using System.Collections.Immutable;
using Jumpwright.Storage.Folders;

namespace Jumpwright.Storage.Stores;

/// <summary>What an import did.</summary>
/// <param name="Batch">Number of the import in the store; the same folder twice keeps its number.</param>
/// <param name="Recordings">Recordings in the folder.</param>
/// <param name="Measured">Of these, measured now or before.</param>
/// <param name="AlreadyKnown">Of these, those whose measurement was in the store already.</param>
/// <param name="Refused">Those refused, in the folder's order.</param>
/// <param name="Problems">Faults of the squad's own tables.</param>
public sealed record ImportReport(
    int Batch,
    int Recordings,
    int Measured,
    int AlreadyKnown,
    ImmutableArray<StoredRecording> Refused,
    ImmutableArray<FolderProblem> Problems
);
