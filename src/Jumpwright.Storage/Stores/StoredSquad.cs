using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Storage.Folders;

namespace Jumpwright.Storage.Stores;

/// <summary>All that the decision rooms need of a squad.</summary>
/// <param name="Squad">The squad and its circumstances.</param>
/// <param name="Histories">One for each athlete, in the order of athletes.csv.</param>
/// <param name="Recordings">All recordings, refused ones included, in the order of contracts §2.</param>
/// <param name="Problems">Faults of the folder, and recordings that belong to nobody.</param>
public sealed record StoredSquad(
    Squad Squad,
    ImmutableArray<History> Histories,
    ImmutableArray<StoredRecording> Recordings,
    ImmutableArray<FolderProblem> Problems
)
{
    /// <summary>
    /// Faults for which nobody may be planned until they are corrected; a command that plans must show them and stop.
    /// </summary>
    public IEnumerable<FolderProblem> StopsPlanning => Problems.Where(p => p.Weight == ProblemWeight.StopsPlanning);
}
