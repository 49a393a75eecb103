namespace Jumpwright.Tests.CheckValues;

/// <summary>
/// The published check values (Data/reference/check-values.csv, our own table; each row names its source).
/// A room registers the rows that concern it with <see cref="Assert"/>; <see cref="CheckValueCoverageTests"/> names the rest.
/// </summary>
public static class CheckValueTable
{
    private static readonly Lazy<IReadOnlyDictionary<string, CheckValue>> Rows = new(Read);

    public static IReadOnlyDictionary<string, CheckValue> All => Rows.Value;

    /// <summary>The row of that id.</summary>
    public static CheckValue Row(string id) => All[id];

    /// <summary>Holds a computed value against its row.</summary>
    public static void Assert(string id, Func<CheckValue, double> compute)
    {
        CheckValue row = Row(id);
        double actual = compute(row);
        Xunit.Assert.True(
            Math.Abs(actual - row.Expected) <= row.Tolerance + (1e-12 * Math.Abs(row.Expected)),
            $"{row}\n  got {actual}, tolerance {row.Tolerance}\n  source: {row.Source}"
        );
    }

    private static Dictionary<string, CheckValue> Read()
    {
        using Stream stream =
            typeof(CheckValueTable).Assembly.GetManifestResourceStream("data/reference/check-values.csv")
            ?? throw new InvalidOperationException("The table of check values is not embedded.");
        using var reader = new StreamReader(stream);
        Dictionary<string, CheckValue> rows = new(StringComparer.Ordinal);
        _ = reader.ReadLine();
        while (reader.ReadLine() is { } line)
        {
            List<string> cells = Cells(line);
            CheckValue row = new(
                cells[0],
                cells[1],
                cells[2],
                double.Parse(cells[3]),
                cells[4],
                double.Parse(cells[5]),
                cells[6]
            );
            rows.Add(row.Id, row);
        }

        return rows;
    }

    private static List<string> Cells(string line)
    {
        List<string> cells = [];
        var cell = new System.Text.StringBuilder();
        bool quoted = false;
        foreach (char c in line)
        {
            if (c == '"')
            {
                quoted = !quoted;
            }
            else if (c == ',' && !quoted)
            {
                cells.Add(cell.ToString());
                cell.Clear();
            }
            else
            {
                cell.Append(c);
            }
        }

        cells.Add(cell.ToString());
        return cells;
    }
}
