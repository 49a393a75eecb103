using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Storage.Folders;
using NodaTime;

namespace Jumpwright.Storage.Stores;

/// <summary>All that a store knows of a squad but the trials, which are many and are read for one athlete at a time.</summary>
/// <param name="Squad">The squad and its circumstances.</param>
/// <param name="Bare">One history for each athlete, in the order of athletes.csv, without trials.</param>
/// <param name="Refused">Recordings that were not believed.</param>
/// <param name="Problems">Faults of the folder, and recordings that belong to nobody.</param>
public sealed record SquadOutline(
    Squad Squad,
    ImmutableArray<History> Bare,
    ImmutableArray<RefusedFile> Refused,
    ImmutableArray<FolderProblem> Problems
)
{
    /// <summary>Faults for which nobody may be planned until they are corrected.</summary>
    public IEnumerable<FolderProblem> StopsPlanning => Problems.Where(p => p.Weight == ProblemWeight.StopsPlanning);
}
