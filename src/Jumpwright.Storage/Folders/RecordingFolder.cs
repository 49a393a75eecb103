using System.Collections.Immutable;
using Jumpwright.Quantities;

namespace Jumpwright.Storage.Folders;

/// <summary>The recordings of a folder, in the order of contracts §2.</summary>
public static class RecordingFolder
{
    /// <summary>
    /// The manifest's recordings in the manifest's order, then the other <c>.csv</c> and <c>.c3d</c> files directly in the
    /// folder by ordinal name. The squad's own tables are skipped. What can't be opened is listed with its sentence.
    /// </summary>
    /// <param name="path">The folder.</param>
    /// <returns>The list, or one sentence if there is no such folder.</returns>
    public static Outcome<ImmutableArray<ListedRecording>> List(string path) => List(path, subfolder: null);

    /// <summary>
    /// As <see cref="List(string)"/>, then what lies in the squad's <c>recordings</c> folder and the manifest does not list:
    /// a recording that names its athlete, day and task itself needs no row.
    /// </summary>
    public static Outcome<ImmutableArray<ListedRecording>> ListSquad(string path) =>
        List(path, SquadTables.RecordingsFolder);

    private static Outcome<ImmutableArray<ListedRecording>> List(string path, string? subfolder)
    {
        if (!Directory.Exists(path))
        {
            return FolderRefusals.NoFolder(path);
        }

        var problems = new ProblemList();
        ImmutableArray<ManifestRow> manifest = ImmutableArray<ManifestRow>.Empty;
        var listed = new List<ListedRecording>();
        string? manifestPath = Directory
            .GetFiles(path)
            .Where(f => Path.GetFileName(f).Equals(SquadTables.Trials, StringComparison.OrdinalIgnoreCase))
            .OrderByDescending(f => Path.GetFileName(f), StringComparer.Ordinal)
            .FirstOrDefault();
        if (manifestPath is not null)
        {
            byte[]? bytes = FileBytes.TryRead(manifestPath, SquadTables.Trials, problems);
            manifest = bytes is null ? manifest : ManifestReader.Read(bytes, problems);
            listed.AddRange(
                problems
                    .Where(p => p.File == SquadTables.Trials && p.Line is null or 1 && p.Weight != ProblemWeight.Note)
                    .Select(p => new ListedRecording(SquadTables.Trials, null, null, new Refusal(p.Sentence)))
            );
        }

        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (ManifestRow row in manifest)
        {
            seen.Add(row.File);
            string full = Path.Combine(path, row.File);
            Refusal? fault = row.Fault ?? (File.Exists(full) ? null : FolderRefusals.MissingRecording(row));
            listed.Add(new ListedRecording(row.File, fault is null ? full : null, row.Labels, fault));
        }

        listed.AddRange(Loose(path, "", seen));
        if (subfolder is not null && Directory.Exists(Path.Combine(path, subfolder)))
        {
            listed.AddRange(Loose(Path.Combine(path, subfolder), subfolder + "/", seen));
        }

        return listed.ToImmutableArray();
    }

    private static IEnumerable<ListedRecording> Loose(string folder, string prefix, HashSet<string> seen) =>
        Directory
            .EnumerateFiles(folder)
            .Select(f => Path.GetFileName(f))
            .Where(f =>
                f.EndsWith(".csv", StringComparison.OrdinalIgnoreCase)
                || f.EndsWith(".c3d", StringComparison.OrdinalIgnoreCase)
            )
            .Where(f => prefix.Length > 0 || !SquadTables.Csv.Contains(f, StringComparer.OrdinalIgnoreCase))
            .Where(f => !seen.Contains(prefix + f))
            .Order(StringComparer.Ordinal)
            .Select(f => new ListedRecording(prefix + f, Path.Combine(folder, f), null, null));
}
