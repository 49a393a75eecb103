using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Storage.Folders.Csv;

namespace Jumpwright.Storage.Folders.Tables;

/// <summary>overrides.csv. A row that can't be read is left out, so that the limit as shipped stands, and said.</summary>
internal static class OverridesReader
{
    public static ImmutableArray<LimitOverride> Read(CsvTable table, FolderReading reading)
    {
        var found = new List<LimitOverride>();
        foreach (CsvRow row in table.Rows)
        {
            var cells = new RowReader(row);
            string? athlete = cells.Text("athlete");
            if (athlete is not null && !reading.Roster.Knows(athlete))
            {
                cells.Fault($"the id '{RowReader.Shown(athlete)}' is nobody's in athletes.csv");
            }

            string? limit = cells.Text("limit");
            if (limit is null)
            {
                cells.Fault("the limit is empty: write its id, as `jumpwright limits` lists them");
            }

            double? value = cells.Number("value", 0, 1_000_000, "");
            if (value is null && !cells.HasFaults)
            {
                cells.Fault("the value is empty: write a number in the limit's unit");
            }

            var from = cells.Date("from");
            var until = cells.Date("until");
            if (cells.HasFaults || limit is null || value is null)
            {
                reading.Problems.Add(
                    row.File,
                    row.Line,
                    ProblemWeight.LeftOut,
                    $"{cells.Faults}. The override was left out; the limit as shipped stands."
                );
                continue;
            }

            found.Add(
                new(
                    limit.ToLowerInvariant(),
                    athlete,
                    value.Value,
                    cells.Text("who") ?? "",
                    cells.Text("reason") ?? "",
                    from,
                    until
                )
            );
        }

        return found.ToImmutableArray();
    }
}
