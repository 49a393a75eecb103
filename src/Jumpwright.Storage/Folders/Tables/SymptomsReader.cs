using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Storage.Folders.Csv;
using NodaTime;

namespace Jumpwright.Storage.Folders.Tables;

/// <summary>symptoms.csv. A row that can't be understood closes its athlete.</summary>
internal static class SymptomsReader
{
    private static readonly ImmutableArray<string> Kinds =
    [
        "pain",
        "swelling",
        "stiffness",
        "giving-way",
        "locking",
        "numbness",
        "illness",
        "other",
    ];

    private static readonly ImmutableArray<string> Times = ["rest", "night", "during", "after", "next-morning"];

    public static ImmutableArray<SymptomReport> Read(CsvTable table, FolderReading reading)
    {
        var reports = new List<SymptomReport>();
        foreach (CsvRow row in table.Rows)
        {
            if (reading.SafetyRowOwner(row) is not { } athlete)
            {
                continue;
            }

            var cells = new RowReader(row);
            SymptomReport? report = cells.IsBroken ? null : One(athlete, cells);
            if (cells.HasFaults)
            {
                reading.Close(athlete, row, cells.Faults);
            }

            if (report is not null)
            {
                reports.Add(report);
            }
        }

        return reports.ToImmutableArray();
    }

    /// <summary>The report as far as it can be read, beside the closure: a swelling without a score is a swelling.</summary>
    private static SymptomReport? One(string athlete, RowReader cells)
    {
        LocalDate? date = cells.Date("date");
        if (date is null && !cells.HasFaults)
        {
            cells.Fault("the date is empty: write the day it was felt");
        }

        string? kind = Word(cells, "kind", Kinds);
        if (kind is null && cells.Text("kind") is null)
        {
            cells.Fault("the kind is empty: write " + string.Join(", ", Kinds));
        }

        string? site = cells.Text("site");
        if (site is null && kind is not ("illness" or "other"))
        {
            cells.Fault("the site is empty: write where it was felt, for example knee");
        }

        string? when = Word(cells, "when", Times);
        double? score = cells.Number("score_0_10", 0, 10, "");
        Side side = cells.Side("side");
        return date is null || kind is null
            ? null
            : new SymptomReport(
                athlete,
                date.Value,
                site?.ToLowerInvariant() ?? "",
                side,
                cells.Text("tissue"),
                cells.Text("named_by"),
                kind,
                when,
                score,
                cells.Text("note")
            );
    }

    private static string? Word(RowReader cells, string column, ImmutableArray<string> known)
    {
        string? word = cells.Text(column)?.ToLowerInvariant().Replace(' ', '-');
        if (word is null || known.Contains(word))
        {
            return word;
        }

        cells.Fault($"{column} '{RowReader.Shown(word)}' must be one of {string.Join(", ", known)}");
        return null;
    }
}
