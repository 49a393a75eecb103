namespace Jumpwright.Simulation.Profiles;

/// <summary>How the next load of a jump and of a heavy pull did on athletes whose lines are known.</summary>
/// <param name="Athletes">How many.</param>
/// <param name="AboveBound">Loads asked for above 110 % of the heaviest, or above what was called light.</param>
/// <param name="JumpsAsked">Share of athletes for whom a further loaded jump was asked for.</param>
/// <param name="JumpDoubtRatio">Doubt of the range of loads after the jump asked for, over that after a random one.</param>
/// <param name="JumpMissRatio">The same for the real miss of its ends, root mean square.</param>
/// <param name="PullsAsked">Share of athletes for whom a further pull was asked for.</param>
/// <param name="PullDoubtRatio">Doubt of the estimated maximum after the pull asked for, over that after a random one.</param>
/// <param name="PullMissRatio">The same for its real miss, root mean square.</param>
/// <param name="PullCoverage">Share of estimated maxima whose ± 2u, after the pull asked for, hold the true one.</param>
public sealed record LoadReport(
    int Athletes,
    int AboveBound,
    double JumpsAsked,
    double JumpDoubtRatio,
    double JumpMissRatio,
    double PullsAsked,
    double PullDoubtRatio,
    double PullMissRatio,
    double PullCoverage
);
