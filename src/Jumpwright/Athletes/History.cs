using System.Collections.Immutable;
using Jumpwright.Recordings;
using Jumpwright.Trials;

namespace Jumpwright.Athletes;

/// <summary>All that is known of one athlete, as the decision rooms take it.</summary>
public sealed record History(
    Athlete Athlete,
    ImmutableArray<MeasuredTrial> Trials,
    ImmutableArray<ScreenResult> Screens,
    ImmutableArray<SymptomReport> Symptoms,
    ImmutableArray<Restriction> Restrictions,
    ImmutableArray<CompletedItem> Completed
)
{
    /// <summary>Work that may have been done beyond <see cref="Completed"/>: it only ever closes.</summary>
    public ImmutableArray<PossibleWork> PossiblyDone { get; init; } = [];

    /// <summary>Limits that are set otherwise for this athlete or the whole squad; Safety decides which of them hold.</summary>
    public ImmutableArray<LimitOverride> Overrides { get; init; } = [];
}
