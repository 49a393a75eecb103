using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Storage.Folders.Csv;
using NodaTime;

namespace Jumpwright.Storage.Folders.Tables;

/// <summary>
/// completed.csv. Work whose day, exercise or pain can't be read closes its athlete: nobody knows from what they must
/// recover. Numbers that only count work (sets, contacts) are left out, which makes the known load smaller and its
/// allowed growth with it.
/// </summary>
internal static class CompletedReader
{
    public static ImmutableArray<CompletedItem> Read(CsvTable table, FolderReading reading)
    {
        var items = new List<CompletedItem>();
        foreach (CsvRow row in table.Rows)
        {
            if (Row(row, reading) is { } item)
            {
                items.Add(item);
            }
        }

        return items.ToImmutableArray();
    }

    /// <summary>One row; null when it can't count, which is then said.</summary>
    internal static CompletedItem? Row(CsvRow row, FolderReading reading)
    {
        if (reading.SafetyRowOwner(row) is not { } athlete)
        {
            return null;
        }

        var needed = new RowReader(row);
        CompletedItem? item = needed.IsBroken ? null : One(athlete, row, needed, reading);
        if (needed.HasFaults)
        {
            reading.Close(athlete, row, needed.Faults);
        }

        return item;
    }

    private static CompletedItem? One(string athlete, CsvRow row, RowReader needed, FolderReading reading)
    {
        LocalDate? date = needed.Date("date");
        if (date is null && !needed.HasFaults)
        {
            needed.Fault("the date is empty: write the day");
        }

        string? exercise = needed.Text("exercise");
        if (exercise is null)
        {
            needed.Fault("the exercise is empty: write its id");
        }

        double? painDuring = needed.Number("pain_during", 0, 10, "");
        double? painNext = needed.Number("pain_next_morning", 0, 10, "");

        bool newPlace = needed.Text("pain_site_new")?.ToLowerInvariant() switch
        {
            null or "no" or "0" or "false" => false,
            _ => true,
        };

        var counts = new RowReader(row);
        int? sets = counts.Whole("sets", 0, 100);
        int? reps = counts.Whole("reps", 0, 1000);
        int? contacts = counts.Whole("contacts", 0, 2000);
        int? faults = counts.Whole("landing_faults", 0, 1000);
        double? effort = counts.Number("effort_rpe", 0, 20, "");
        double? drop = counts.Number("drop_height_m", 0, 3, "m");
        int? set = counts.Whole("set", 1, 100);
        double? height = counts.Number("height_m", 0, 1.5, "m");
        double? contact = counts.Number("contact_time_s", 0.05, 2, "s");
        double? minutes = counts.Number("session_minutes", 0, 600, "min");
        if (counts.HasFaults)
        {
            reading.Problems.Add(
                row.File,
                row.Line,
                ProblemWeight.LeftOut,
                $"{counts.Faults}. The value was left out.",
                athlete
            );
        }

        return date is null || exercise is null
            ? null
            : new CompletedItem(
                athlete,
                date.Value,
                needed.Text("session") ?? "",
                exercise.ToLowerInvariant(),
                sets ?? (set is null ? 0 : 1),
                reps ?? 0,
                contacts ?? 0,
                faults,
                painDuring,
                painNext,
                effort,
                drop,
                needed.Text("note")
            )
            {
                Set = set,
                HeightM = height,
                ContactTimeS = contact,
                PainSiteNew = newPlace,
                SessionMinutes = minutes,
            };
    }
}
