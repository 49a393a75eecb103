using System.Collections.Immutable;
using Jumpwright.Quantities;
using nietras.SeparatedValues;

namespace Jumpwright.Storage.Folders.Csv;

/// <summary>A squad table read cell by cell. It knows nothing of what the cells mean.</summary>
internal sealed class CsvTable
{
    /// <summary>No row that a person writes is longer.</summary>
    private const int LongestLine = 1_000_000;

    private readonly string[] _header;

    private CsvTable(string file, string[] header) => (File, _header) = (file, header);

    public string File { get; }

    public ImmutableArray<CsvRow> Rows { get; private set; } = [];

    public int IndexOf(string column) =>
        Array.FindIndex(_header, h => h.Equals(column, StringComparison.OrdinalIgnoreCase));

    /// <summary>Reads a table.</summary>
    /// <param name="schema">Its name and columns.</param>
    /// <param name="bytes">The whole file.</param>
    /// <param name="problems">Takes what was found.</param>
    /// <returns>The table, or null when nothing of it can be trusted.</returns>
    public static CsvTable? Read(TableSchema schema, ReadOnlySpan<byte> bytes, ProblemList problems)
    {
        string? text = TableText.Decode(schema.File, bytes, schema.WhenUnreadable, problems);
        if (text is null)
        {
            return null;
        }

        int endOfHeader = text.IndexOf('\n', StringComparison.Ordinal);
        string first = endOfHeader < 0 ? text : text[..endOfHeader];
        if (string.IsNullOrWhiteSpace(first))
        {
            problems.Add(
                schema.File,
                1,
                schema.WhenUnreadable,
                $"the header is missing: the first line must be {schema.Header}."
            );
            return null;
        }

        char delimiter = Delimiter(schema.File, first, problems);
        List<(int Line, string[] Cells, string? Fault)> records =
            WholeRecords(text, delimiter) ?? LineByLine(text, delimiter);
        var table = new CsvTable(schema.File, records[0].Cells);
        if (!table.HeaderHolds(schema, problems))
        {
            return null;
        }

        table.Rows = records
            .Skip(1)
            .Select(r => new CsvRow(table, r.Line, r.Cells, r.Fault ?? table.FaultOf(r.Cells)))
            .Where(r => !r.IsBlank)
            .ToImmutableArray();
        return table;
    }

    private static char Delimiter(string file, string header, ProblemList problems)
    {
        char found =
            header.Contains(',', StringComparison.Ordinal) ? ','
            : header.Contains(';', StringComparison.Ordinal) ? ';'
            : header.Contains('\t', StringComparison.Ordinal) ? '\t'
            : ',';
        if (found != ',')
        {
            string name = found == ';' ? "semicolons" : "tabs";
            problems.Add(
                file,
                1,
                ProblemWeight.Note,
                $"the cells are parted by {name}; read so, but save it with commas."
            );
        }

        return found;
    }

    private static IEnumerable<(int Line, string[] Cells)> Records(string text, char delimiter, int firstLine)
    {
        using SepReader reader = Sep.New(delimiter)
            .Reader(o => o with { HasHeader = false, Unescape = true, DisableColCountCheck = true })
            .FromText(text);
        var records = new List<(int, string[])>();
        foreach (SepReader.Row row in reader)
        {
            var cells = new string[row.ColCount];
            for (int i = 0; i < cells.Length; i++)
            {
                cells[i] = row[i].ToString().Trim();
            }

            records.Add((firstLine + row.LineNumberFrom - 1, cells));
        }

        return records;
    }

    /// <summary>The records as RFC 4180 parts them; null where that can't be trusted for the whole text.</summary>
    private static List<(int Line, string[] Cells, string? Fault)>? WholeRecords(string text, char delimiter)
    {
        if (!QuoteScan.IsRegular(text, delimiter) || text.Split('\n').Any(line => line.Length > LongestLine))
        {
            return null;
        }

        try
        {
            return [.. Records(text, delimiter, 1).Select(r => (r.Line, r.Cells, (string?)null))];
        }
        catch (NotSupportedException)
        {
            // The parser bears no record of more than 16 million characters; one that is over many lines ends here.
            return null;
        }
    }

    /// <summary>Then a line is a row, and only the lines at fault are lost.</summary>
    private static List<(int Line, string[] Cells, string? Fault)> LineByLine(string text, char delimiter)
    {
        var records = new List<(int, string[], string?)>();
        string[] lines = text.Split('\n');
        for (int i = 0; i < lines.Length; i++)
        {
            string line = lines[i];
            string? fault =
                line.Length > LongestLine ? Sentence.Of($"it is longer than a million characters: shorten it")
                : QuoteScan.IsRegular(line, delimiter) ? null
                : Sentence.Of(
                    $"a quotation mark stands in the middle of a cell, or is not closed: put the whole cell in quotation marks and double those inside"
                );
            string[] cells =
                line.Length == 0 ? [""]
                : fault is null ? Records(line, delimiter, i + 1).First().Cells
                : Array.ConvertAll(
                    line[..Math.Min(line.Length, LongestLine)].Split(delimiter),
                    c => c.Trim().Trim('"')
                );
            records.Add((i + 1, cells, fault));
        }

        return records;
    }

    private string? FaultOf(string[] cells) =>
        cells.Length == _header.Length
            ? null
            : Sentence.Of(
                $"it has {cells.Length} cells where the header has {_header.Length}: put a cell that holds a comma in quotation marks, and keep the empty ones"
            );

    private bool HeaderHolds(TableSchema schema, ProblemList problems)
    {
        foreach (
            IGrouping<string, string> twice in _header
                .Where(h => h.Length > 0)
                .GroupBy(h => h, StringComparer.OrdinalIgnoreCase)
                .Where(g => g.Count() > 1)
        )
        {
            problems.Add(File, 1, schema.WhenUnreadable, $"the column '{twice.Key}' stands twice: take one out.");
            return false;
        }

        foreach (string column in _header.Where(h => !schema.Columns.Contains(h, StringComparer.OrdinalIgnoreCase)))
        {
            string shown = column.Length == 0 ? "a column without a name" : $"the column '{column}'";
            problems.Add(
                File,
                1,
                ProblemWeight.Note,
                $"{shown} is not known and was not read; the columns are {schema.Header}."
            );
        }

        string[] missing = schema.Required.Where(c => IndexOf(c) < 0).ToArray();
        if (missing.Length > 0)
        {
            problems.Add(
                File,
                1,
                schema.WhenUnreadable,
                $"the header lacks {string.Join(", ", missing)}: it must be {schema.Header} (cells may be empty)."
            );
            return false;
        }

        return true;
    }
}
