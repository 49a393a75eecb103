using Jumpwright.Storage.Folders;

namespace Jumpwright.App.Intake;

/// <summary>
/// Which recordings a path holds, in the order of contracts §2: a file is itself; a folder is as <see cref="RecordingFolder"/>
/// lists it, so that <c>measure</c> and <c>import</c> can't differ.
/// </summary>
internal static class RecordingList
{
    /// <summary>Lists one path, which must exist.</summary>
    public static IEnumerable<RecordingEntry> Of(string path) =>
        Directory.Exists(path)
            ? RecordingFolder
                .List(path)
                .Require()
                .Select(l => new RecordingEntry(l.File, l.FullPath ?? Path.Combine(path, l.File), l.Labels, l.Fault))
            : [new RecordingEntry(Path.GetFileName(path), path)];
}
