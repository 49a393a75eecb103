using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Quantities;

namespace Jumpwright.Storage.Folders;

/// <summary>
/// A squad folder (contracts §4, docs/squad-folder.md) as it was understood. One bad row never stops the rest; what can't
/// be understood closes: a symptom or restriction row that can't be read becomes a <see cref="Restriction"/> that no rule
/// understands, so that nothing is planned for its athlete until somebody corrects the row.
/// </summary>
/// <param name="Squad">From squad.yaml and fixtures.ics.</param>
/// <param name="Athletes">In the order of athletes.csv.</param>
/// <param name="Screens">In the order of screens.csv.</param>
/// <param name="Symptoms">In the order of symptoms.csv.</param>
/// <param name="Restrictions">In the order of restrictions.csv, then those that stand for rows nobody could read.</param>
/// <param name="Completed">In the order of completed.csv.</param>
/// <param name="Manifest">In the order of trials.csv.</param>
/// <param name="Problems">All faults found, file by file.</param>
public sealed record SquadFolder(
    Squad Squad,
    ImmutableArray<Athlete> Athletes,
    ImmutableArray<ScreenResult> Screens,
    ImmutableArray<SymptomReport> Symptoms,
    ImmutableArray<Restriction> Restrictions,
    ImmutableArray<CompletedItem> Completed,
    ImmutableArray<ManifestRow> Manifest,
    ImmutableArray<FolderProblem> Problems
)
{
    /// <summary>The faults for which nobody may be planned until they are corrected; usually none.</summary>
    public IEnumerable<FolderProblem> StopsPlanning => Problems.Where(p => p.Weight == ProblemWeight.StopsPlanning);

    /// <summary>Reads the folder.</summary>
    /// <param name="path">A folder with athletes.csv or squad.yaml.</param>
    /// <returns>What was understood, or one sentence if this is no squad folder.</returns>
    public static Outcome<SquadFolder> Read(string path) => SquadFolderReader.ReadFolder(path);

    /// <summary>Reads the same files from memory.</summary>
    /// <param name="name">What to call the squad if squad.yaml does not say.</param>
    /// <param name="files">Content by the names of <see cref="SquadTables.All"/>.</param>
    public static Outcome<SquadFolder> Read(string name, IReadOnlyDictionary<string, ReadOnlyMemory<byte>> files) =>
        SquadFolderReader.ReadFiles(name, files, []);
}
