using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Exercises;

namespace Jumpwright.App.Desk;

/// <summary>All that is known of a squad, wherever it was kept: a folder or a store.</summary>
/// <param name="Squad">The squad and its circumstances.</param>
/// <param name="Histories">One for each athlete, in the squad's order.</param>
/// <param name="Refused">Recordings that were not believed.</param>
/// <param name="Problems">Faults of the squad's own tables, as sentences.</param>
/// <param name="StopsPlanning">Faults for which nobody may be planned; usually none.</param>
/// <param name="Raw">A recording's bytes by its SHA-256, or null when they are not at hand.</param>
/// <param name="Corrected">Trials some of whose events a person set.</param>
public sealed record SquadMaterial(
    Squad Squad,
    ImmutableArray<History> Histories,
    ImmutableArray<RefusedRecording> Refused,
    ImmutableArray<string> Problems,
    ImmutableArray<string> StopsPlanning,
    Func<string, byte[]?> Raw,
    ImmutableArray<CorrectedTrial> Corrected
)
{
    /// <summary>The exercises, with the coach's own.</summary>
    public Catalogue Catalogue { get; init; } = Catalogue.Standard;
}
