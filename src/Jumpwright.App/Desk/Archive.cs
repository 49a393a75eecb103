using System.IO.Compression;
using System.Text.Json;
using Jumpwright.Quantities;
using Jumpwright.Storage.Stores;

namespace Jumpwright.App.Desk;

/// <summary>A squad in one file: its folder as it is, and the store as of one moment. What comes out of it is the same squad.</summary>
internal static class Archive
{
    private const string StoreName = OpenedSquad.StoreInFolder;

    /// <summary>Writes the archive.</summary>
    /// <param name="folder">The squad folder; null when a store stands by itself.</param>
    /// <param name="store">The store, copied as of one moment.</param>
    /// <param name="to">Where it is written.</param>
    public static void Write(string? folder, Store store, Stream to)
    {
        using var zip = new ZipArchive(to, ZipArchiveMode.Create, leaveOpen: true);
        string scratch = Directory.CreateTempSubdirectory("jumpwright-backup-").FullName;
        try
        {
            string copy = Path.Combine(scratch, StoreName);
            store.CopyTo(copy);
            zip.CreateEntryFromFile(copy, StoreName);
        }
        finally
        {
            Directory.Delete(scratch, recursive: true);
        }

        using (var journal = new StreamWriter(zip.CreateEntry("journal.jsonl").Open()))
        {
            foreach (JournalEntry entry in store.Journal())
            {
                journal.WriteLine(
                    JsonSerializer.Serialize(
                        new
                        {
                            id = entry.Id,
                            kind = entry.Kind,
                            athlete = entry.AthleteId,
                            session = entry.SessionId,
                            made_at = entry.MadeAt.ToString(),
                            who = entry.Who,
                            data = JsonSerializer.Deserialize<JsonElement>(entry.Json),
                        }
                    )
                );
            }
        }

        if (folder is null)
        {
            return;
        }

        foreach (
            string path in Directory
                .EnumerateFiles(folder, "*", SearchOption.AllDirectories)
                .Order(StringComparer.Ordinal)
        )
        {
            string name = Path.GetRelativePath(folder, path).Replace('\\', '/');
            // The store was copied above; the certificate's secret, the settings with the lock, and what waits to be taken in belong to this machine alone.
            bool own =
                name.StartsWith(StoreName, StringComparison.Ordinal)
                || name.StartsWith("jumpwright-share.", StringComparison.Ordinal)
                || name == Settings.SettingsFile.Name
                || name.StartsWith(".jumpwright-incoming/", StringComparison.Ordinal)
                || name == "journal.jsonl";
            if (!own)
            {
                zip.CreateEntryFromFile(path, name);
            }
        }
    }

    /// <summary>Puts an archive's squad into a new folder.</summary>
    /// <returns>How many files were written.</returns>
    public static Outcome<int> Restore(string archive, string folder)
    {
        if (Directory.Exists(folder) && Directory.EnumerateFileSystemEntries(folder).Any())
        {
            return new Refusal($"'{folder}' is not empty: give a new folder, so that nothing there is overwritten.");
        }

        try
        {
            using ZipArchive zip = ZipFile.OpenRead(archive);
            if (zip.GetEntry(StoreName) is null)
            {
                return new Refusal($"'{archive}' is no backup of this program: it holds no {StoreName}.");
            }

            string inside = Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder)) + Path.DirectorySeparatorChar;
            if (
                zip.Entries.FirstOrDefault(e =>
                    !Path.GetFullPath(Path.Combine(folder, e.FullName)).StartsWith(inside, StringComparison.Ordinal)
                ) is
                { } out_
            )
            {
                return new Refusal(
                    $"'{archive}' names a file '{out_.FullName}' that leads out of the folder: nothing was written."
                );
            }

            foreach (ZipArchiveEntry entry in zip.Entries)
            {
                string path = Path.GetFullPath(Path.Combine(folder, entry.FullName));
                Directory.CreateDirectory(Path.GetDirectoryName(path)!);
                entry.ExtractToFile(path);
                if (!OperatingSystem.IsWindows())
                {
                    File.SetUnixFileMode(path, UnixFileMode.UserRead | UnixFileMode.UserWrite);
                }
            }

            return zip.Entries.Count;
        }
        catch (Exception e) when (e is InvalidDataException or IOException or UnauthorizedAccessException)
        {
            return new Refusal($"'{archive}' can't be restored ({e.Message.TrimEnd('.')}).");
        }
    }
}
