using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Calculators.Curves;
using Jumpwright.Prescribing.Change;
using Jumpwright.Prescribing.Gains;
using Jumpwright.Prescribing.Proposals;
using Jumpwright.Quantities;

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
                .OrderByDescending(t => t.Watched)
                .ThenByDescending(t => t.Series.Sessions.Length)
                .ThenBy(t => t.Series.Key.Task)
                .ThenBy(t => t.Series.Key.Measure, StringComparer.Ordinal)
                .Take(4),
        ];
}
