using Jumpwright.Storage.Folders.Csv;

namespace Jumpwright.Storage.Folders;

/// <summary>Takes an athlete out of a squad folder: their rows of every table, and their recordings.</summary>
public static class FolderEraser
{
    /// <summary>How many files were changed or deleted.</summary>
    /// <param name="folder">The squad folder.</param>
    /// <param name="athlete">Whose.</param>
    /// <param name="recordings">Their recordings, relative to the folder.</param>
    public static int Erase(string folder, string athlete, IEnumerable<string> recordings)
    {
        int touched = 0;
        string inside = Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder)) + Path.DirectorySeparatorChar;
        foreach (string file in recordings)
        {
            string path = Path.GetFullPath(Path.Combine(folder, file));
            if (path.StartsWith(inside, StringComparison.Ordinal) && File.Exists(path))
            {
                File.Delete(path);
                touched++;
            }
        }

        foreach (string table in SquadTables.Csv)
        {
            string path = Path.Combine(folder, table);
            if (!File.Exists(path))
            {
                continue;
            }

            byte[] before = File.ReadAllBytes(path);
            byte[] after = RowCutter.Without(before, table == SquadTables.Athletes ? "id" : "athlete", athlete);
            if (!after.AsSpan().SequenceEqual(before))
            {
                WholeFile.Replace(path, after);
                touched++;
            }
        }

        return touched;
    }
}
