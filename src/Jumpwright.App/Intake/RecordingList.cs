using System.Collections.Immutable;
using Jumpwright.Quantities;
using Jumpwright.Storage.Folders;

namespace Jumpwright.App.Intake;

/// <summary>Which recordings a path holds: a file is itself; a folder is read in the order of contracts §2.</summary>
internal static class RecordingList
{
    /// <summary>Lists one path, which must exist.</summary>
    public static ImmutableArray<ListedRecording> Of(string path) =>
        !Directory.Exists(path) ? [new ListedRecording(Path.GetFileName(path), path, null, null)]
        : RecordingFolder.List(path).TryGet(out ImmutableArray<ListedRecording> listed, out Refusal? refusal) ? listed
        : [new ListedRecording(SquadTables.Trials, null, null, refusal)];
}
