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
);
