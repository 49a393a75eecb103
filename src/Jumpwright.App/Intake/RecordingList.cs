using Jumpwright.Quantities;

namespace Jumpwright.App.Intake;

/// <summary>
/// Which recordings a path holds, in the order of contracts §2: a file is itself; a folder is its manifest in the
/// manifest's order, then every other <c>.csv</c> and <c>.c3d</c> directly in it by ordinal name, without the squad's tables.
/// </summary>
internal static class RecordingList
{
    private static readonly HashSet<string> SquadTables = new(StringComparer.OrdinalIgnoreCase)
    {
        "athletes.csv",
        Manifest.FileName,
        "completed.csv",
        "screens.csv",
        "symptoms.csv",
        "restrictions.csv",
    };

    /// <summary>Lists one path, which must exist.</summary>
    public static IEnumerable<RecordingEntry> Of(string path) =>
        Directory.Exists(path) ? OfFolder(path) : [new RecordingEntry(Path.GetFileName(path), path)];

    private static IEnumerable<RecordingEntry> OfFolder(string folder)
    {
        var listed = new HashSet<string>(StringComparer.Ordinal);
        string manifest = Path.Combine(folder, Manifest.FileName);
        if (File.Exists(manifest))
        {
            foreach (ManifestRow row in Manifest.Read(File.ReadAllBytes(manifest)))
            {
                listed.Add(row.File);
                yield return Entry(folder, row);
            }
        }

        foreach (
            string name in Directory
                .EnumerateFiles(folder)
                .Select(f => Path.GetFileName(f))
                .Where(IsRecording)
                .Order(StringComparer.Ordinal)
        )
        {
            if (!listed.Contains(name))
            {
                yield return new RecordingEntry(name, Path.Combine(folder, name));
            }
        }
    }

    private static RecordingEntry Entry(string folder, ManifestRow row)
    {
        string full = Path.GetFullPath(Path.Combine(folder, row.File));
        string root = Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder)) + Path.DirectorySeparatorChar;
        Refusal? outside = full.StartsWith(root, StringComparison.Ordinal)
            ? null
            : new Refusal(
                $"{Manifest.FileName} line {row.Line}: '{row.File}' lies outside the folder; put the recording in the "
                    + "folder and name it relative to it."
            );
        return new RecordingEntry(row.File, full, row.Labels, row.Refusal ?? outside);
    }

    private static bool IsRecording(string name) =>
        !SquadTables.Contains(name)
        && (
            name.EndsWith(".csv", StringComparison.OrdinalIgnoreCase)
            || name.EndsWith(".c3d", StringComparison.OrdinalIgnoreCase)
        );
}
