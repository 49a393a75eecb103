using Jumpwright.Quantities;

namespace Jumpwright.Recordings;

/// <summary>The header of a table: which columns it has and what they mean.</summary>
internal sealed class Header
{
    private Header(int line, TableKind kind, Column[] columns) => (Line, Kind, Columns) = (line, kind, columns);

    public int Line { get; }

    public TableKind Kind { get; }

    public Column[] Columns { get; }

    /// <summary>Index of the column with that role, or −1.</summary>
    public int IndexOf(ColumnRole role) => Array.FindIndex(Columns, c => c.Role == role);

    public static Outcome<Header> Read(ReadOnlySpan<byte> line, int number, List<string> warnings)
    {
        List<string> names = Fields.Of(line);
        if (names.Count == 1 && line.IndexOfAny((byte)';', (byte)'\t') >= 0)
        {
            return Refusals.SemicolonsOrTabs(number);
        }

        var found = new List<string>();
        Column[] columns = [.. names.Select(n => Column.Of(n, found))];
        bool Has(ColumnRole role) => columns.Any(c => c.Role == role);

        TableKind kind;
        if (Has(ColumnRole.Time) && (Has(ColumnRole.Force) || Has(ColumnRole.LeftForce) || Has(ColumnRole.RightForce)))
        {
            kind = TableKind.Force;
        }
        else if (Has(ColumnRole.Contact) && Has(ColumnRole.Flight))
        {
            kind = TableKind.Interval;
        }
        else if (Has(ColumnRole.Frame) && Has(ColumnRole.Event))
        {
            kind = TableKind.Frame;
        }
        else
        {
            return Refusals.UnknownHeader(number, Fields.Shown(line));
        }

        warnings.AddRange(found);
        if (kind == TableKind.Force && Has(ColumnRole.LeftForce) != Has(ColumnRole.RightForce))
        {
            // One plate of two is not the whole person; only where force_N stands too can it be left out.
            if (!Has(ColumnRole.Force))
            {
                return Refusals.MissingColumn(number, Has(ColumnRole.LeftForce) ? "force_right_N" : "force_left_N");
            }

            Ignore(columns, ColumnRole.LeftForce);
            Ignore(columns, ColumnRole.RightForce);
        }
        else if (kind == TableKind.Force && Has(ColumnRole.LeftForce) && Has(ColumnRole.Force))
        {
            Ignore(columns, ColumnRole.Force);
        }

        ColumnRole[] roles = kind switch
        {
            TableKind.Force => [ColumnRole.Time, ColumnRole.Force, ColumnRole.LeftForce, ColumnRole.RightForce],
            TableKind.Interval => [ColumnRole.Contact, ColumnRole.Flight],
            _ => [ColumnRole.Frame, ColumnRole.Event],
        };
        var seen = new HashSet<ColumnRole>();
        for (int i = 0; i < columns.Length; i++)
        {
            Column column = columns[i];
            if (!roles.Contains(column.Role))
            {
                columns[i] = column with { Role = ColumnRole.Ignored };
                warnings.Add(Repairs.ColumnIgnored(column.Name));
            }
            else if (!seen.Add(column.Role))
            {
                return Refusals.RepeatedColumn(number, Fields.Shown(column.Name));
            }
        }

        return new Header(number, kind, columns);
    }

    private static void Ignore(Column[] columns, ColumnRole role)
    {
        for (int i = 0; i < columns.Length; i++)
        {
            if (columns[i].Role == role)
            {
                columns[i] = columns[i] with { Role = ColumnRole.Ignored };
            }
        }
    }
}
