using System.Text;
using Jumpwright.Storage.Folders.Csv;

namespace Jumpwright.Storage.Folders;

/// <summary>Writes rows of the manifest, trials.csv, and leaves every other row as it is.</summary>
public static class ManifestEditor
{
    /// <summary>The manifest's columns (contracts §1).</summary>
    public static IReadOnlyList<string> Columns { get; } =
    ["file", "athlete", "date", "task", "body_mass_kg", "external_load_kg", "drop_height_m", "limb"];

    /// <summary>The table with one row for that file, whatever stood there before.</summary>
    /// <param name="table">The bytes of trials.csv; empty where there is none yet.</param>
    /// <param name="cells">Cells by column; a column that the table lacks is added.</param>
    public static byte[] With(ReadOnlySpan<byte> table, IReadOnlyDictionary<string, string> cells)
    {
        byte[] rest = table.IsEmpty
            ? Encoding.UTF8.GetBytes(string.Join(',', Columns) + "\n")
            : RowCutter.Without(table, "file", cells["file"]);
        return RowAppender.With(rest, cells);
    }

    /// <summary>The table without the rows of that file.</summary>
    public static byte[] Without(ReadOnlySpan<byte> table, string file) => RowCutter.Without(table, "file", file);
}
