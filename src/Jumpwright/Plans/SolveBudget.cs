namespace Jumpwright.Plans;

/// <summary>How the solver may work. Deterministic time stops it, so that the same request gives the same plan.</summary>
public sealed record SolveBudget
{
    /// <summary>CP-SAT's deterministic time for the main search, its own unit (roughly a busy second).</summary>
    public double DeterministicTime { get; init; } = 4;

    /// <summary>Wall-clock guard of one search, s; far above what deterministic time takes even on a machine shared by many.
    /// When it bites, a second run may differ.</summary>
    public double WallSeconds { get; init; } = 600;

    /// <summary>The search may stop once (bound − objective) / objective is at most this. 0 asks for proof.</summary>
    public double GapLimit { get; init; } = 0.002;
}
