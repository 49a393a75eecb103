using System.Collections.Immutable;
using Jumpwright.Quantities;
using Jumpwright.Statistics;
using NodaTime;

namespace Jumpwright.Prescribing.Change;

/// <summary>One athlete's sessions on one trend. Means of single trials, never bests.</summary>
/// <param name="AthleteId">Whose.</param>
/// <param name="Key">What.</param>
/// <param name="Unit">Unit of the values.</param>
/// <param name="Days">Day of each session, in order.</param>
/// <param name="Sessions">What was measured; day numbers count from the first session.</param>
public sealed record Series(
    string AthleteId,
    SeriesKey Key,
    Unit Unit,
    ImmutableArray<LocalDate> Days,
    ImmutableArray<SessionMean> Sessions
);
