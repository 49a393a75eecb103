using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Calculators.Curves;
using Jumpwright.Prescribing.Change;
using Jumpwright.Prescribing.Gains;
using Jumpwright.Prescribing.Proposals;
using Jumpwright.Quantities;
using Jumpwright.Trials;

namespace Jumpwright.Prescribing.Reports;

/// <summary>All that a report says of one athlete.</summary>
internal sealed record AthleteFacts(
    History History,
    Profile Profile,
    ImmutableArray<Trend> Trends,
    Outcome<DropCurve> Drops,
    double? DropLimitM,
    ImmutableArray<DropJumpTrial> DropTrials,
    Outcome<TestProposal> NextTest,
    Outcome<GainRanking> Gains
)
{
    /// <summary>Watched trends first, then those with most sessions; four at most.</summary>
    internal ImmutableArray<Trend> Shown =>
        [
            .. Trends
                .Where(t => t.Watched || Told.Contains(t.Series.Key.Measure))
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
