using System.Collections.Immutable;

namespace Jumpwright.Calculators.RunUps;

/// <summary>Approach jumps and the standing jump to compare with, measured the same way.</summary>
/// <param name="Trials">Single approach jumps.</param>
/// <param name="StandingHeightM">Mean standing jump, m.</param>
/// <param name="StandingUncertaintyM">Its standard uncertainty, m.</param>
/// <param name="LimitMS">The fastest run-up that limits allow, m/s; null when none is in force.</param>
public sealed record RunUpInput(
    ImmutableArray<ApproachTrial> Trials,
    double StandingHeightM,
    double StandingUncertaintyM,
    double? LimitMS = null
)
{
    /// <summary>False leaves the next test unsought: it is the dear part.</summary>
    public bool SeekNext { get; init; } = true;
}
