using System.Text;

namespace Jumpwright.Storage.Folders.Csv;

/// <summary>Adds a row to a table that a person keeps, and leaves every other row as it is.</summary>
internal static class RowAppender
{
    /// <summary>The table with one row more; a column that it lacks and the row needs is added, empty in every other row.</summary>
    /// <param name="table">The bytes of a table with a header.</param>
    /// <param name="cells">Cells by column.</param>
    public static byte[] With(ReadOnlySpan<byte> table, IReadOnlyDictionary<string, string> cells)
    {
        string[] records = [.. RowCutter.Records(Encoding.UTF8.GetString(table).TrimStart('\uFEFF'))];
        string header = records.Length == 0 ? "" : records[0].TrimEnd('\r', '\n');
        char delimiter =
            header.Contains(',', StringComparison.Ordinal) ? ','
            : header.Contains(';', StringComparison.Ordinal) ? ';'
            : header.Contains('\t', StringComparison.Ordinal) ? '\t'
            : ',';
        List<string> columns = [.. header.Split(delimiter).Select(c => c.Trim().Trim('"').ToLowerInvariant())];
        string[] missing = [.. cells.Keys.Where(c => cells[c].Length > 0 && !columns.Contains(c))];
        var made = new StringBuilder();
        for (int i = 0; i < records.Length; i++)
        {
            string record = missing.Length == 0 ? records[i] : records[i].TrimEnd('\r', '\n');
            made.Append(record);
            if (missing.Length > 0 && record.Length > 0)
            {
                foreach (string column in missing)
                {
                    made.Append(delimiter).Append(i == 0 ? column : "");
                }

                made.Append('\n');
            }
        }

        if (made.Length > 0 && made[^1] != '\n')
        {
            made.Append('\n');
        }

        columns.AddRange(missing);
        made.AppendJoin(delimiter, columns.Select(c => Cell(cells.GetValueOrDefault(c, ""), delimiter))).Append('\n');
        return Encoding.UTF8.GetBytes(made.ToString());
    }

    /// <summary>A cell as RFC 4180 has it; a line end would begin another row, so it becomes a space.</summary>
    private static string Cell(string value, char delimiter)
    {
        string line = value.Replace('\r', ' ').Replace('\n', ' ');
        return line.AsSpan().ContainsAny(delimiter, '"') || line.Trim() != line
            ? "\"" + line.Replace("\"", "\"\"", StringComparison.Ordinal) + "\""
            : line;
    }
}
