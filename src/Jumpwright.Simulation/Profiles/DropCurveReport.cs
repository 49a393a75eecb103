namespace Jumpwright.Simulation.Profiles;

/// <summary>How the choice of a drop height and of the next test did.</summary>
/// <param name="Athletes">How many.</param>
/// <param name="WithinThreePct">Share whose chosen height loses less than 3 % of their best allowed index, after four heights × three trials.</param>
/// <param name="WithinThreePctOfJumped">The same against the best of heights up to the highest jumped.</param>
/// <param name="MeanLossPct">Mean loss, %.</param>
/// <param name="WorstLossPct">Loss that 95 % stay below, %.</param>
/// <param name="AboveLimit">Heights chosen or proposed above the limit.</param>
/// <param name="StepsTooHigh">Proposals more than a step above the highest jumped.</param>
/// <param name="DoubtRatio">Doubt of the best height left by the suggested third height over that left by a random one, mean over mean.</param>
/// <param name="MissRatio">The same for the real miss of the best height, root mean square.</param>
public sealed record DropCurveReport(
    int Athletes,
    double WithinThreePct,
    double WithinThreePctOfJumped,
    double MeanLossPct,
    double WorstLossPct,
    int AboveLimit,
    int StepsTooHigh,
    double DoubtRatio,
    double MissRatio
);
