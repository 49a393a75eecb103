using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Storage.Folders.Csv;
using NodaTime;

namespace Jumpwright.Storage.Folders.Tables;

/// <summary>
/// screens.csv. A result that can't be read hides the older results of the same test: the newest word on it is unknown, and
/// an older one must not speak in its place.
/// </summary>
internal static class ScreensReader
{
    public static ImmutableArray<ScreenResult> Read(CsvTable table, FolderReading reading)
    {
        var results = new List<ScreenResult>();
        var hidden = new List<(string Athlete, string? Test, LocalDate? Until)>();
        foreach (CsvRow row in table.Rows)
        {
            if (reading.Owner(row) is not { } athlete)
            {
                continue;
            }

            var cells = new RowReader(row);
            ScreenResult? result = cells.IsBroken ? null : One(athlete, cells, row, reading);
            if (result is not null)
            {
                results.Add(result);
                continue;
            }

            string? test = cells.IsBroken ? null : cells.Text("test")?.ToLowerInvariant();
            LocalDate? until = cells.IsBroken ? null : new RowReader(row).Date("date");
            hidden.Add((athlete, test, until));
            string what = test is null ? "all tests" : $"'{RowReader.Shown(test)}'";
            string when = until is null ? "" : $" up to {until:uuuu-MM-dd}";
            reading.Problems.Add(
                row.File,
                row.Line,
                ProblemWeight.LeftOut,
                $"{cells.Faults}. Until it is corrected, {what} of {athlete}{when} count as not tested.",
                athlete
            );
        }

        return results
            .Where(r =>
                !hidden.Exists(h =>
                    h.Athlete == r.AthleteId
                    && (h.Test is null || h.Test == r.Test)
                    && (h.Until is null || r.Date <= h.Until)
                )
            )
            .ToImmutableArray();
    }

    private static ScreenResult? One(string athlete, RowReader cells, CsvRow row, FolderReading reading)
    {
        LocalDate? date = cells.Date("date");
        string? test = cells.Text("test")?.ToLowerInvariant();
        if (date is null && !cells.HasFaults)
        {
            cells.Fault("the date is empty: write the day of the test");
        }

        if (test is null)
        {
            cells.Fault("the test is empty: write its id, for example landing-screen");
        }

        Side side = cells.Side("side");
        ScreenTest known = ScreenTest.Find(test);
        double? value = cells.Number("value", double.MinValue, double.MaxValue, known.Unit);
        if (value is null && cells.Text("value") is null)
        {
            cells.Fault("the value is empty");
        }

        string? unit = cells.Text("unit");
        if (value is { } v && !cells.HasFaults)
        {
            (value, unit) = known.InItsUnit(v, unit, cells, row, reading.Problems);
        }

        int? trial = cells.Whole("trial", 1, 1000);
        return cells.HasFaults
            ? null
            : new ScreenResult(
                athlete,
                date!.Value,
                test!,
                side,
                value!.Value,
                unit ?? "",
                trial,
                cells.Text("assessor"),
                cells.Text("note")
            );
    }
}
