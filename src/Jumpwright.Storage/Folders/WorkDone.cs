using System.Collections.Immutable;
using System.Text;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Quantities;
using Jumpwright.Storage.Folders.Csv;
using Jumpwright.Storage.Folders.Tables;

namespace Jumpwright.Storage.Folders;

/// <summary>Takes a log of work done into completed.csv. Only rows that can be read whole go in: there, a bad one would close its athlete.</summary>
public static class WorkDone
{
    /// <summary>Adds the rows of a log to the folder's completed.csv; adding the same log twice adds nothing.</summary>
    /// <param name="folder">A squad folder.</param>
    /// <param name="log">A CSV with the columns of completed.csv.</param>
    /// <returns>What became of each row; or a sentence: no squad folder, a log whose header can't be read, a file that can't be written.</returns>
    public static Outcome<WorkAdded> Add(string folder, string log)
    {
        var problems = new ProblemList();
        string name = Path.GetFileName(log);
        if (FileBytes.TryRead(log, name, problems) is not { } bytes)
        {
            return new Refusal(problems[0].Sentence);
        }

        return SquadFolderReader
            .Open(folder)
            .Then(files => files.Read())
            .Then<WorkAdded>(squad =>
            {
                TableSchema schema = TableSchema.Completed with { File = name };
                if (CsvTable.Read(schema, bytes, problems) is not { } table)
                {
                    return new Refusal(problems.First(p => p.Weight == ProblemWeight.StopsPlanning).Sentence);
                }

                var notAdded = problems.ConvertAll(p => p.Sentence);
                return Sorted(squad, table, notAdded)
                    .Then(rows => Written(folder, rows, notAdded))
                    .Then<WorkAdded>(added => added with { Strange = StrangeOf(squad, added) });
            });
    }

    private static Outcome<(List<(CsvRow Row, CompletedItem Item)> New, int Known)> Sorted(
        SquadFolder squad,
        CsvTable table,
        List<string> notAdded
    )
    {
        HashSet<CompletedItem> known = [.. squad.Completed];
        HashSet<object> places = [.. squad.Completed.Select(PlaceOf)];
        List<(CsvRow, CompletedItem)> rows = [];
        int twice = 0;
        foreach (CsvRow row in table.Rows)
        {
            var faults = new ProblemList();
            var reading = new FolderReading(faults) { Roster = new Roster(squad.Athletes.Select(a => a.Id)) };
            CompletedItem? item = CompletedReader.Row(row, reading);
            if (item is null || faults.Exists(f => f.Weight != ProblemWeight.Note))
            {
                string why = faults.Count > 0 ? faults[0].Sentence : $"{row.File} line {row.Line}: it can't be read.";
                notAdded.Add(
                    why.Split(". Until this row")[0].Split(". Nothing is planned")[0].TrimEnd('.')
                        + ". It was not added."
                );
            }
            else if (!known.Add(item))
            {
                twice++;
            }
            else if (!places.Add(PlaceOf(item)))
            {
                notAdded.Add(
                    $"{row.File} line {row.Line}: {SquadTables.Completed} says of {item.AthleteId} on {item.Date:uuuu-MM-dd} "
                        + $"something else for the same work ({item.ExerciseId}): correct it there. It was not added."
                );
            }
            else
            {
                rows.Add((row, item));
            }
        }

        return (rows, twice);
    }

    private static Outcome<WorkAdded> Written(
        string folder,
        (List<(CsvRow Row, CompletedItem Item)> New, int Known) rows,
        List<string> notAdded
    )
    {
        string path = Path.Combine(folder, SquadTables.Completed);
        try
        {
            if (rows.New.Count > 0)
            {
                byte[] table = File.Exists(path)
                    ? File.ReadAllBytes(path)
                    : Encoding.UTF8.GetBytes(TableSchema.Completed.Header + "\n");
                foreach ((CsvRow row, _) in rows.New)
                {
                    table = RowAppender.With(table, row.Cells(TableSchema.Completed.Columns));
                }

                WholeFile.Replace(path, table);
            }
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return new Refusal(
                $"{SquadTables.Completed} can't be written ({e.GetType().Name}): close it in other programs and check its permissions. Nothing was added."
            );
        }

        return new WorkAdded([.. rows.New.Select(r => r.Item)], rows.Known, [.. notAdded]);
    }

    private static ImmutableArray<string> StrangeOf(SquadFolder squad, WorkAdded added)
    {
        Catalogue catalogue = OwnExercises.Join(Catalogue.Standard, squad.Squad.ExerciseFiles).Catalogue;
        return
        [
            .. added
                .Added.Select(i => i.ExerciseId)
                .Distinct(StringComparer.Ordinal)
                .Where(id => catalogue.Find(id) is null)
                .Order(StringComparer.Ordinal),
        ];
    }

    private static object PlaceOf(CompletedItem item) =>
        (item.AthleteId, item.Date, item.SessionId, item.ExerciseId, item.Set);
}
