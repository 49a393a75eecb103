using System.Collections.Immutable;

namespace Jumpwright.Simulation.Profiles;

/// <summary>What hangs on the house's numbers.</summary>
/// <param name="Athletes">Simulated athletes behind each row of curves and levels.</param>
/// <param name="Drops">Choice of a drop height: number, how it was varied, share within 3 % (%), mean loss (%).</param>
/// <param name="Levels">Levels: number, how, coverage (%), false alarms over those stated, sessions to notice 5 %.</param>
/// <param name="Friction">Anchors: coefficient, share of set-ups judged to hold (%), share of those that would slide (%).</param>
/// <param name="Effects">Ranking of gains: effect, how, what comes first, whether that is settled.</param>
public sealed record SensitivityReport(
    int Athletes,
    ImmutableArray<(string Number, string How, double WithinPct, double LossPct)> Drops,
    ImmutableArray<(string Number, string How, double CoveragePct, double FalseShare, double Delay)> Levels,
    ImmutableArray<(double Coefficient, double HoldsPct, double SlidesPct)> Friction,
    ImmutableArray<(string Effect, string How, string First, bool Settled)> Effects
);
