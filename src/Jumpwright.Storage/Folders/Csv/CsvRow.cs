namespace Jumpwright.Storage.Folders.Csv;

/// <summary>A row as it stands in the file, by column name.</summary>
/// <param name="table">Its table.</param>
/// <param name="line">Line on which it begins, from 1.</param>
/// <param name="cells">Trimmed cells.</param>
/// <param name="fault">Why the cells can't be trusted; null: they can.</param>
internal sealed class CsvRow(CsvTable table, int line, string[] cells, string? fault)
{
    public int Line { get; } = line;

    public string? Fault { get; } = fault;

    public string File => table.File;

    /// <summary>The cell, or null when it is empty or the table has no such column.</summary>
    public string? this[string column]
    {
        get
        {
            int index = table.IndexOf(column);
            return index >= 0 && index < cells.Length && cells[index].Length > 0 ? cells[index] : null;
        }
    }

    /// <summary>Whether any cell holds that word, wherever it stands.</summary>
    public bool Mentions(string word) => Array.Exists(cells, c => c.Contains(word, StringComparison.OrdinalIgnoreCase));

    /// <summary>The cells under those of the columns that the table has.</summary>
    public Dictionary<string, string> Cells(IEnumerable<string> columns) =>
        columns.Where(c => table.IndexOf(c) >= 0).ToDictionary(c => c, c => this[c] ?? "", StringComparer.Ordinal);

    public bool IsBlank => Array.TrueForAll(cells, c => c.Length == 0);
}
