using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Storage.Folders.Csv;
using NodaTime;

namespace Jumpwright.Storage.Folders.Tables;

/// <summary>athletes.csv. What can't be read becomes unknown, and a row that can't be read at all takes an operation for possible.</summary>
internal static class AthletesReader
{
    /// <summary>Stands as the site of an operation when nobody can tell from the row whether there was one.</summary>
    public const string SiteNotReadable = "not readable";

    private static readonly ImmutableArray<string> Sexes = ["female", "male", "f", "m", "other"];

    public static ImmutableArray<Athlete> Read(CsvTable table, FolderReading reading)
    {
        var athletes = new List<Athlete>();
        foreach (CsvRow row in table.Rows)
        {
            string? id = row["id"];
            if (id is null || !Roster.IsId(id))
            {
                reading.Problems.Add(
                    row.File,
                    row.Line,
                    ProblemWeight.LeftOut,
                    id is null
                        ? "the id is empty: give the athlete one, for example a01. The athlete was left out."
                        : $"the id '{RowReader.Shown(id)}' must be letters and digits with hyphens between, for example a01. The athlete was left out."
                );
                continue;
            }

            Athlete athlete = One(id, row, reading);
            int first = athletes.FindIndex(a => a.Id == id);
            if (first < 0)
            {
                athletes.Add(athlete);
                continue;
            }

            athletes[first] = Agreement(athletes[first], athlete);
            reading.Problems.Add(
                row.File,
                row.Line,
                ProblemWeight.LeftOut,
                $"{id} stands twice: take one row out. What the two rows say differently counts as unknown until then.",
                id
            );
        }

        return athletes.ToImmutableArray();
    }

    private static Athlete One(string id, CsvRow row, FolderReading reading)
    {
        var cells = new RowReader(row);
        if (cells.IsBroken)
        {
            reading.Problems.Add(
                row.File,
                row.Line,
                ProblemWeight.ClosesAthlete,
                $"{cells.Faults}. {id} counts as unknown in everything, an operation included, until it is corrected.",
                id
            );
            var possible = new Operation(null, SiteNotReadable, Side.Unknown);
            return new Athlete(id, id, null, null, null, null, TrainingLevel.Unknown, possible, null);
        }

        if (!Roster.IsKebab(id))
        {
            reading.Problems.Add(
                row.File,
                row.Line,
                ProblemWeight.Note,
                $"the id '{id}' is better written small, with hyphens.",
                id
            );
        }

        LocalDate? born = cells.Date("birth_date");
        double? mass = cells.Number("body_mass_kg", 15, 300, "kg");
        double? stature = cells.Number("stature_m", 0.8, 2.6, "m");
        TrainingLevel level = Level(cells);
        if (cells.Text("sex") is { } sex && !Sexes.Contains(sex.ToLowerInvariant()))
        {
            cells.Fault(
                $"sex '{RowReader.Shown(sex)}' must be female, male, other or empty; nothing is decided from it"
            );
        }

        Operation? operation = OperationOf(cells);
        if (cells.HasFaults)
        {
            reading.Problems.Add(
                row.File,
                row.Line,
                ProblemWeight.LeftOut,
                $"{cells.Faults}. Until it is corrected it counts as unknown for {id}.",
                id
            );
        }

        return new Athlete(
            id,
            cells.Text("name") ?? id,
            born,
            mass,
            stature,
            cells.Text("sport"),
            level,
            operation,
            cells.Text("note")
        );
    }

    private static TrainingLevel Level(RowReader cells)
    {
        switch (cells.Text("level")?.ToLowerInvariant())
        {
            case null:
                return TrainingLevel.Unknown;
            case "beginner":
                return TrainingLevel.Beginner;
            case "intermediate":
                return TrainingLevel.Intermediate;
            case "advanced":
                return TrainingLevel.Advanced;
            default:
                cells.Fault(
                    $"level '{RowReader.Shown(cells.Text("level")!)}' must be beginner, intermediate, advanced or empty"
                );
                return TrainingLevel.Unknown;
        }
    }

    /// <summary>Any filled cell of the three means that there was an operation.</summary>
    private static Operation? OperationOf(RowReader cells)
    {
        string? site = cells.Text("operation_site");
        LocalDate? date = cells.Date("operation_date");
        Side side = cells.Side("operation_side");
        bool any =
            site is not null || cells.Text("operation_date") is not null || cells.Text("operation_side") is not null;
        if (any && site is null)
        {
            cells.Fault(
                "an operation is hinted at but its operation_site is empty: write the site, or empty all three cells"
            );
        }

        return any ? new Operation(date, site ?? SiteNotReadable, side) : null;
    }

    private static Athlete Agreement(Athlete a, Athlete b) =>
        new(
            a.Id,
            a.Name,
            a.BirthDate == b.BirthDate ? a.BirthDate : null,
            a.BodyMassKg == b.BodyMassKg ? a.BodyMassKg : null,
            a.StatureM == b.StatureM ? a.StatureM : null,
            a.Sport ?? b.Sport,
            a.Level == b.Level ? a.Level : TrainingLevel.Unknown,
            a.Operation == b.Operation ? a.Operation
                : a.Operation is null || b.Operation is null ? a.Operation ?? b.Operation
                : new Operation(
                    null,
                    a.Operation.Site == b.Operation.Site ? a.Operation.Site : SiteNotReadable,
                    Side.Unknown
                ),
            a.Note ?? b.Note
        );
}
