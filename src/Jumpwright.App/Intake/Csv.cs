using System.Text;

namespace Jumpwright.App.Intake;

/// <summary>Reads RFC 4180: commas, quotes doubled inside quotes, any line end; a byte-order mark is skipped.</summary>
internal static class Csv
{
    public static IReadOnlyList<CsvRow> Read(string text)
    {
        var rows = new List<CsvRow>();
        var cells = new List<string>();
        var cell = new StringBuilder();
        int line = 1;
        int began = 1;
        bool quoted = false;
        int at = text.StartsWith('\uFEFF') ? 1 : 0;
        for (; at < text.Length; at++)
        {
            char c = text[at];
            if (c == '\n')
            {
                line++;
            }

            if (quoted)
            {
                if (c != '"')
                {
                    cell.Append(c);
                }
                else if (at + 1 < text.Length && text[at + 1] == '"')
                {
                    cell.Append('"');
                    at++;
                }
                else
                {
                    quoted = false;
                }
            }
            else if (c == '"' && cell.Length == 0)
            {
                quoted = true;
            }
            else if (c == ',')
            {
                cells.Add(cell.ToString());
                cell.Clear();
            }
            else if (c == '\n')
            {
                EndRow();
                began = line;
            }
            else if (c != '\r')
            {
                cell.Append(c);
            }
        }

        if (cell.Length > 0 || cells.Count > 0)
        {
            EndRow();
        }

        return rows;

        void EndRow()
        {
            cells.Add(cell.ToString());
            cell.Clear();
            rows.Add(new CsvRow(began, [.. cells]));
            cells.Clear();
        }
    }
}
