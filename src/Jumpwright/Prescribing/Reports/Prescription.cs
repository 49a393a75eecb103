using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Prescribing.Change;
using Jumpwright.Prescribing.Gains;
using Jumpwright.Prescribing.Proposals;
using Jumpwright.Quantities;
using Jumpwright.Trials;

namespace Jumpwright.Prescribing.Reports;

/// <summary>All that is decided and reported of one athlete.</summary>
/// <param name="History">What is known.</param>
/// <param name="Profile">What limits them.</param>
/// <param name="Trends">What changed.</param>
/// <param name="Curves">How high, how heavy, how fast.</param>
/// <param name="NextTests">What to test next, each passed by the gate or refused.</param>
/// <param name="Gains">What training typically brings.</param>
public sealed record Prescription(
    History History,
    Profile Profile,
    ImmutableArray<Trend> Trends,
    AthleteCurves Curves,
    ImmutableArray<TestOffer> NextTests,
    Outcome<GainRanking> Gains
)
{
    /// <summary>Tests that were done while a written word stood against them, in sentences.</summary>
    public ImmutableArray<Sentence> InsideRestrictions { get; init; } = [];

    /// <summary>
    /// Watched trends first, then those with most sessions; four at most. Of two ways to get one jump's height only one is shown
    /// (<see cref="HeightMethods"/>).
    /// </summary>
    public ImmutableArray<Trend> Shown =>
        [
            .. HeightMethods
                .One(Trends.Where(t => t.Watched || Told.Contains(t.Series.Key.Measure)), t => t.Series)
                .OrderByDescending(t => t.Watched)
                .ThenByDescending(t => t.Series.Sessions.Length)
                .ThenBy(t => t.Series.Key.Task)
                .ThenBy(t => t.Series.Key.Measure, StringComparer.Ordinal)
                .Take(4),
        ];

    /// <summary>Measures that a report tells of besides those that are watched.</summary>
    private static readonly ImmutableHashSet<string> Told =
    [
        MeasureNames.JumpHeight,
        MeasureNames.JumpHeightFlightTime,
        MeasureNames.ReactiveStrengthIndex,
        MeasureNames.ReactiveStrengthIndexModified,
        MeasureNames.ContactTime,
        MeasureNames.PeakLandingForce,
    ];
}
