using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Storage.Folders.Csv;
using NodaTime;

namespace Jumpwright.Storage.Folders.Tables;

/// <summary>
/// restrictions.csv. A row whose days or cells can't be read closes its athlete. What its words mean, and that it names who
/// set it, is judged by the safety rules, which close on what they don't know.
/// </summary>
internal static class RestrictionsReader
{
    public static ImmutableArray<Restriction> Read(CsvTable table, FolderReading reading)
    {
        var restrictions = new List<Restriction>();
        foreach (CsvRow row in table.Rows)
        {
            if (reading.SafetyRowOwner(row) is not { } athlete)
            {
                continue;
            }

            var cells = new RowReader(row);
            Restriction? restriction = cells.IsBroken ? null : One(athlete, cells);
            if (cells.HasFaults)
            {
                reading.Close(athlete, row, cells.Faults);
            }

            if (restriction is not null)
            {
                restrictions.Add(restriction);
            }
        }

        return restrictions.ToImmutableArray();
    }

    private static Restriction? One(string athlete, RowReader cells)
    {
        LocalDate? from = cells.Date("from");
        LocalDate? until = cells.Date("until");
        Side side = cells.Side("side");
        if (cells.HasFaults)
        {
            return null;
        }

        if (from is { } first && until is { } last && last < first)
        {
            cells.Fault($"until {last:uuuu-MM-dd} lies before from {first:uuuu-MM-dd}");
            return null;
        }

        return new Restriction(
            athlete,
            from ?? Unreadable.Always,
            until,
            cells.Text("site")?.ToLowerInvariant(),
            side,
            Words(cells.Text("allowed")),
            Words(cells.Text("forbidden")),
            cells.Text("limit"),
            cells.Text("set_by"),
            cells.Text("role"),
            cells.Text("note")
        );
    }

    private static ImmutableArray<string> Words(string? cell) =>
        cell is null
            ? []
            :
            [
                .. cell.Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
                    .Select(w => w.ToLowerInvariant()),
            ];
}
