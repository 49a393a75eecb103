using System.Text;
using nietras.SeparatedValues;

namespace Jumpwright.Storage.Folders.Csv;

/// <summary>Cuts somebody's rows out of a table and leaves every other character as it is.</summary>
internal static class RowCutter
{
    public static byte[] Without(ReadOnlySpan<byte> bytes, string column, string id) => Without(bytes, (column, id));

    /// <summary>The same for rows that hold each of these values.</summary>
    public static byte[] Without(ReadOnlySpan<byte> bytes, params (string Column, string Value)[] all)
    {
        bool marked = bytes.StartsWith("\uFEFF"u8);
        string text = Encoding.UTF8.GetString(marked ? bytes[3..] : bytes);
        string[] records = [.. Records(text)];
        if (records.Length == 0)
        {
            return bytes.ToArray();
        }

        char delimiter =
            records[0].Contains(',', StringComparison.Ordinal) ? ','
            : records[0].Contains(';', StringComparison.Ordinal) ? ';'
            : '\t';
        string[] header = Cells(records[0], delimiter);
        (int Place, string Value)[] places =
        [
            .. all.Select(one =>
                (Array.FindIndex(header, c => c.Equals(one.Column, StringComparison.OrdinalIgnoreCase)), one.Value)
            ),
        ];
        IEnumerable<string> kept = records.Where((record, i) => i == 0 || !IsTheirs(Cells(record, delimiter), places));
        byte[] body = Encoding.UTF8.GetBytes(string.Concat(kept));
        return marked ? [0xEF, 0xBB, 0xBF, .. body] : body;
    }

    private static bool IsTheirs(string[] cells, (int Place, string Value)[] places) =>
        Array.TrueForAll(
            places,
            p => p.Place < 0 ? p.Value.Length == 0 : p.Place < cells.Length && cells[p.Place] == p.Value
        );

    /// <summary>Each record with its line end; where quotation marks can't be trusted, each line.</summary>
    internal static IEnumerable<string> Records(string text)
    {
        char[] delimiters = [',', ';', '\t'];
        string plain = text.Replace("\r\n", "\n", StringComparison.Ordinal);
        bool regular = Array.Exists(delimiters, d => QuoteScan.IsRegular(plain, d));
        bool inside = false;
        int start = 0;
        for (int i = 0; i < text.Length; i++)
        {
            if (text[i] == '"')
            {
                inside = !inside && regular;
            }
            else if (text[i] == '\n' && !inside)
            {
                yield return text[start..(i + 1)];
                start = i + 1;
            }
        }

        if (start < text.Length)
        {
            yield return text[start..];
        }
    }

    private static string[] Cells(string record, char delimiter)
    {
        string line = record.TrimEnd('\r', '\n');
        if (line.Length == 0 || !QuoteScan.IsRegular(line.Replace("\r\n", "\n", StringComparison.Ordinal), delimiter))
        {
            return Array.ConvertAll(line.Split(delimiter), c => c.Trim().Trim('"'));
        }

        using SepReader reader = Sep.New(delimiter)
            .Reader(o => o with { HasHeader = false, Unescape = true, DisableColCountCheck = true })
            .FromText(line);
        foreach (SepReader.Row row in reader)
        {
            var cells = new string[row.ColCount];
            for (int i = 0; i < cells.Length; i++)
            {
                cells[i] = row[i].ToString().Trim();
            }

            return cells;
        }

        return [];
    }
}
