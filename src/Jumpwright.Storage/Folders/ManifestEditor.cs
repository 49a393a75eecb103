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
        string text = Encoding.UTF8.GetString(rest).TrimStart('\uFEFF');
        int end = text.IndexOf('\n', StringComparison.Ordinal);
        string header = (end < 0 ? text : text[..end]).TrimEnd('\r');
        char delimiter =
            header.Contains(',', StringComparison.Ordinal) ? ','
            : header.Contains(';', StringComparison.Ordinal) ? ';'
            : header.Contains('\t', StringComparison.Ordinal) ? '\t'
            : ',';
        List<string> columns = [.. header.Split(delimiter).Select(c => c.Trim().Trim('"').ToLowerInvariant())];
        string[] missing = [.. cells.Keys.Where(c => cells[c].Length > 0 && !columns.Contains(c))];
        var made = new StringBuilder();
        if (missing.Length == 0)
        {
            made.Append(text);
        }
        else
        {
            // Every row gets its empty cells, so that none has too few.
            string[] lines = text.Split('\n');
            for (int i = 0; i < lines.Length; i++)
            {
                string line = lines[i].TrimEnd('\r');
                if (line.Length > 0)
                {
                    made.Append(line);
                    foreach (string column in missing)
                    {
                        made.Append(delimiter).Append(i == 0 ? column : "");
                    }

                    made.Append('\n');
                }
            }

            columns.AddRange(missing);
        }

        if (made.Length > 0 && made[^1] != '\n')
        {
            made.Append('\n');
        }

        made.AppendJoin(delimiter, columns.Select(c => Cell(cells.GetValueOrDefault(c, ""), delimiter))).Append('\n');
        return Encoding.UTF8.GetBytes(made.ToString());
    }

    /// <summary>The table without the rows of that file.</summary>
    public static byte[] Without(ReadOnlySpan<byte> table, string file) => RowCutter.Without(table, "file", file);

    /// <summary>A cell as RFC 4180 has it; a line end would begin another row, so it becomes a space.</summary>
    private static string Cell(string value, char delimiter)
    {
        string line = value.Replace('\r', ' ').Replace('\n', ' ');
        return line.AsSpan().ContainsAny(delimiter, '"') || line.Trim() != line
            ? "\"" + line.Replace("\"", "\"\"", StringComparison.Ordinal) + "\""
            : line;
    }
}
