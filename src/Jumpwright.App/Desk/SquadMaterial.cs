using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
using NodaTime;

namespace Jumpwright.App.Desk;

/// <summary>All that is known of a squad, wherever it was kept: a folder or a store.</summary>
/// <param name="Squad">The squad and its circumstances.</param>
/// <param name="Dossiers">One for each athlete, in the squad's order; each reads its trials when they are first asked for.</param>
/// <param name="Refused">Recordings that were not believed.</param>
/// <param name="Problems">Faults of the squad's own tables, as sentences.</param>
/// <param name="StopsPlanning">Faults for which nobody may be planned; usually none.</param>
/// <param name="Raw">A recording's bytes by its SHA-256, or null when they are not at hand.</param>
/// <param name="Recorded">What can be asked of all recordings without reading them.</param>
public sealed record SquadMaterial(
    Squad Squad,
    ImmutableArray<Dossier> Dossiers,
    ImmutableArray<RefusedRecording> Refused,
    ImmutableArray<string> Problems,
    ImmutableArray<string> StopsPlanning,
    Func<string, byte[]?> Raw,
    RecordedTrials Recorded
)
{
    private readonly Once<Whole> _whole = new(() => new Whole([.. Dossiers.Select(d => d.History)]));

    /// <summary>The exercises, with the coach's own.</summary>
    public Catalogue Catalogue { get; init; } = Catalogue.Standard;

    /// <summary>One for each athlete, in the squad's order; reads the trials of all.</summary>
    public ImmutableArray<History> Histories => _whole.Value.Histories;

    /// <summary>Trials some of whose events a person set; reads the trials of all.</summary>
    public IEnumerable<CorrectedTrial> Corrected => Dossiers.SelectMany(d => d.Corrected);

    /// <summary>What a person set of a trial's events; null when nobody did.</summary>
    public CorrectedTrial? CorrectionOf(MeasuredTrial trial) =>
        Dossiers
            .FirstOrDefault(d => string.Equals(d.Athlete.Id, trial.AthleteId, StringComparison.Ordinal))
            ?.Corrected.FirstOrDefault(c => c.Sha256 == trial.Sha256 && c.Set.Trial == trial.Trial.Number);

    /// <summary>The same as it was before any work of that day or later, so that a plan from that day is made as it was then.</summary>
    public SquadMaterial BeforeWorkOn(LocalDate day) =>
        new(Squad, [.. Dossiers.Select(d => d.BeforeWorkOn(day))], Refused, Problems, StopsPlanning, Raw, Recorded)
        {
            Catalogue = Catalogue,
        };

    private sealed record Whole(ImmutableArray<History> Histories);
}
