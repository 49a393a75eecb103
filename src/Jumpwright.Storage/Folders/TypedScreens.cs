using System.Collections.Immutable;
using System.Text;
using Jumpwright.Athletes;
using Jumpwright.Quantities;
using Jumpwright.Storage.Folders.Csv;
using Jumpwright.Storage.Folders.Tables;

namespace Jumpwright.Storage.Folders;

/// <summary>
/// Writes tests that somebody typed in a page into screens.csv. They are read by the table's own reader first: a row that can't be read would
/// hide what was known before, so none of it goes in.
/// </summary>
public static class TypedScreens
{
    /// <summary>Adds rows to the folder's screens.csv, all or none.</summary>
    /// <param name="folder">A squad folder.</param>
    /// <param name="rows">Cells by column, one row a value.</param>
    /// <returns>What the reader makes of them; or a sentence, and nothing was written.</returns>
    public static Outcome<ImmutableArray<ScreenResult>> Add(
        string folder,
        IReadOnlyList<IReadOnlyDictionary<string, string>> rows
    ) =>
        SquadFolderReader
            .Open(folder)
            .Then(files => files.Read())
            .Then(squad => Read(squad, rows))
            .Then(read => Written(folder, rows, read));

    private static Outcome<ImmutableArray<ScreenResult>> Read(
        SquadFolder squad,
        IReadOnlyList<IReadOnlyDictionary<string, string>> rows
    )
    {
        byte[] alone = Header();
        foreach (IReadOnlyDictionary<string, string> row in rows)
        {
            alone = RowAppender.With(alone, row);
        }

        var problems = new ProblemList();
        var reading = new FolderReading(problems) { Roster = new Roster(squad.Athletes.Select(a => a.Id)) };
        if (
            CsvTable.Read(TableSchema.Screens, alone, problems) is { } table
            && ScreensReader.Read(table, reading) is var results
            && results.Length == rows.Count
            && problems.TrueForAll(p => p.Weight == ProblemWeight.Note)
        )
        {
            return results;
        }

        FolderProblem? first = problems.Find(p => p.Weight != ProblemWeight.Note);
        return new Refusal(
            (first?.Sentence ?? "It can't be read.").Split(". Until")[0].TrimEnd('.') + ". Nothing was written."
        );
    }

    private static Outcome<ImmutableArray<ScreenResult>> Written(
        string folder,
        IReadOnlyList<IReadOnlyDictionary<string, string>> rows,
        ImmutableArray<ScreenResult> read
    )
    {
        string path = Path.Combine(folder, SquadTables.Screens);
        try
        {
            byte[] table = File.Exists(path) ? File.ReadAllBytes(path) : Header();
            var problems = new ProblemList();
            if (CsvTable.Read(TableSchema.Screens, table, problems) is null)
            {
                return new Refusal(
                    problems.First(p => p.Weight == ProblemWeight.StopsPlanning).Sentence + " Nothing was written."
                );
            }

            foreach (IReadOnlyDictionary<string, string> row in rows)
            {
                table = RowAppender.With(table, row);
            }

            WholeFile.Replace(path, table);
            return read;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return new Refusal(
                $"{SquadTables.Screens} can't be written ({e.GetType().Name}): close it in other programs and check its permissions. Nothing was written."
            );
        }
    }

    private static byte[] Header() => Encoding.UTF8.GetBytes(TableSchema.Screens.Header + "\n");
}
