using Microsoft.Data.Sqlite;
using NodaTime;
using NodaTime.Text;

namespace Jumpwright.Storage.Stores;

/// <summary>
/// Rows by plain SQL, for what the pages wait for: building the mapper's model takes longer than reading an athlete, and it
/// reads millions of measures several times slower. Writing, and everything nobody waits for, stays with the mapper.
/// </summary>
internal sealed class PlainReader(SqliteConnection connection, SqliteTransaction transaction)
{
    // The same few thousand words stand in millions of rows: each is kept once.
    private readonly Dictionary<string, string> _words = new(StringComparer.Ordinal);

    /// <summary>All rows, in the order of the statement.</summary>
    /// <param name="sql">The program's own text.</param>
    /// <param name="row">Makes something of one row; null is left out.</param>
    /// <param name="parameters">Values for <c>$name</c> in the text.</param>
    public List<T> Rows<T>(
        string sql,
        Func<SqliteDataReader, T?> row,
        params ReadOnlySpan<(string Name, object Value)> parameters
    )
        where T : class
    {
        using SqliteCommand command = connection.CreateCommand();
        command.Transaction = transaction;
#pragma warning disable CA2100 // Every text is a constant of this program; values go in as parameters.
        command.CommandText = sql;
#pragma warning restore CA2100
        foreach ((string name, object value) in parameters)
        {
            command.Parameters.AddWithValue(name, value);
        }

        var rows = new List<T>();
        using SqliteDataReader reader = command.ExecuteReader();
        while (reader.Read())
        {
            if (row(reader) is { } made)
            {
                rows.Add(made);
            }
        }

        return rows;
    }

    /// <summary>A text, the same object for the same text.</summary>
    public string Word(SqliteDataReader reader, int column)
    {
        string read = reader.GetString(column);
        if (!_words.TryGetValue(read, out string? kept))
        {
            _words[read] = kept = read;
        }

        return kept;
    }

    public static string? Text(SqliteDataReader reader, int column) =>
        reader.IsDBNull(column) ? null : reader.GetString(column);

    public static double? Number(SqliteDataReader reader, int column) =>
        reader.IsDBNull(column) ? null : reader.GetDouble(column);

    public static LocalDate Day(SqliteDataReader reader, int column) =>
        LocalDatePattern.Iso.Parse(reader.GetString(column)).Value;
}
