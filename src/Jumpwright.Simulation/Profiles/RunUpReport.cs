namespace Jumpwright.Simulation.Profiles;

/// <summary>How the run-up curve and its next test did on athletes whose curve is known.</summary>
/// <param name="Athletes">How many.</param>
/// <param name="LossMeanPct">Height that the chosen speed loses against the best within the bound, mean, %.</param>
/// <param name="LossWorstPct">Loss that 95 % stay below, %.</param>
/// <param name="AboveBound">Speeds chosen or asked for above 110 % of the fastest run.</param>
/// <param name="DoubtRatio">Loss still to be expected after the test asked for, over that after a random one, mean over mean.</param>
/// <param name="LossRatio">The same for the real loss.</param>
public sealed record RunUpReport(
    int Athletes,
    double LossMeanPct,
    double LossWorstPct,
    int AboveBound,
    double DoubtRatio,
    double LossRatio
);
