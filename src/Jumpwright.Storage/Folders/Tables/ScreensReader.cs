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
            bool effusion = row.Fault is null
                ? row["test"]?.Contains("effusion", StringComparison.OrdinalIgnoreCase) == true
                : row.Mentions("effusion");
            if ((effusion ? reading.SafetyRowOwner(row) : reading.Owner(row)) is not { } athlete)
            {
                continue;
            }

            var cells = new RowReader(row);
            ScreenResult? result = cells.IsBroken ? null : One(athlete, cells, row, reading);
            if (result is not null)
            {
                results.Add(result);
                if (Swelling(result) is { } swelling)
                {
                    reading.Swellings.Add(swelling);
                }

                continue;
            }

            if (effusion)
            {
                // It may say that the knee is swollen, and nobody can read it.
                reading.Close(athlete, row, cells.Faults);
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
        FieldTest? known = FieldTest.Find(test);
        if (known is null && test?.Contains("effusion", StringComparison.Ordinal) == true)
        {
            cells.Fault($"the test '{RowReader.Shown(test)}' is not known: write {FieldTest.Effusion}");
        }

        if (known is { Sided: true } && side is Side.Unknown or Side.Both && !cells.HasFaults)
        {
            cells.Fault($"the side of {known!.Id} is not said: write left or right, one row each");
        }

        double? value =
            known?.Id == FieldTest.Effusion && cells.Text("value") is not null
                ? ScreenTest.EffusionGrade(cells)
                : cells.Number("value", double.MinValue, double.MaxValue, known?.Unit ?? "");
        if (value is null && cells.Text("value") is null)
        {
            cells.Fault("the value is empty");
        }

        string? unit = cells.Text("unit");
        if (value is { } v && !cells.HasFaults)
        {
            (value, unit) = ScreenTest.InItsUnit(test ?? "", v, unit, cells, row, reading.Problems);
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

    /// <summary>A knee that a stroke test finds swollen is a swelling, and closes what a swelling closes.</summary>
    private static SymptomReport? Swelling(ScreenResult result) =>
        result.Test == FieldTest.Effusion && result.Value >= FieldTest.SwollenFrom
            ? new SymptomReport(
                result.AthleteId,
                result.Date,
                "knee",
                result.Side,
                null,
                result.Assessor,
                "swelling",
                null,
                null,
                result.Note
            )
            : null;
}
