using Jumpwright.Athletes;
using Jumpwright.Storage.Folders.Csv;

namespace Jumpwright.Storage.Folders.Tables;

/// <summary>What the readers of the tables share while one folder is read.</summary>
internal sealed class FolderReading(ProblemList problems)
{
    public ProblemList Problems { get; } = problems;

    public Roster Roster { get; set; } = new([]);

    /// <summary>One for each row that must close because nobody can read it.</summary>
    public List<Restriction> Closures { get; } = [];

    /// <summary>One for each screen that found a swelling.</summary>
    public List<SymptomReport> Swellings { get; } = [];

    /// <summary>Closes an athlete until the row is corrected.</summary>
    public void Close(string athlete, CsvRow row, string what)
    {
        FolderProblem problem = Problems.Add(
            row.File,
            row.Line,
            ProblemWeight.ClosesAthlete,
            $"{what}. Until this row is corrected nothing is planned for {athlete}.",
            athlete
        );
        Closures.Add(Unreadable.Closing(athlete, problem));
    }

    /// <summary>
    /// Whose row of a safety table it is; null when it is nobody's, which is then said: without an id it stops all planning,
    /// an id that looks like somebody's closes for them, any other is only named (athletes leave a squad, their rows stay).
    /// </summary>
    public string? SafetyRowOwner(CsvRow row)
    {
        string? written = row["athlete"];
        if (written is null)
        {
            Problems.Add(
                row.File,
                row.Line,
                ProblemWeight.StopsPlanning,
                "no athlete is named, so it may be anybody's: write whose it is. Nothing is planned until then."
            );
            return null;
        }

        if (Roster.Knows(written))
        {
            return written;
        }

        string[] meant = Roster.MayBe(written).ToArray();
        foreach (string athlete in meant)
        {
            Close(
                athlete,
                row,
                $"the id '{RowReader.Shown(written)}' is nobody's in athletes.csv; if {athlete} is meant, write {athlete}"
            );
        }

        if (meant.Length == 0)
        {
            NobodysRow(row, written);
        }

        return null;
    }

    /// <summary>Whose row of a table it is that can only help; null when it is nobody's, which is then said.</summary>
    public string? Owner(CsvRow row)
    {
        string? written = row["athlete"];
        if (written is not null && Roster.Knows(written))
        {
            return written;
        }

        NobodysRow(row, written);
        return null;
    }

    private void NobodysRow(CsvRow row, string? written) =>
        Problems.Add(
            row.File,
            row.Line,
            ProblemWeight.LeftOut,
            written is null
                ? "no athlete is named: write whose it is. The row was left out."
                : $"the id '{RowReader.Shown(written)}' is nobody's in athletes.csv: "
                    + "add the athlete there or correct the id. The row was left out."
        );
}
