using Jumpwright.Athletes;
using Jumpwright.Dosing;
using Jumpwright.Exercises;
using Jumpwright.Quantities;
using Jumpwright.Safety;

namespace Jumpwright.Plans;

/// <summary>How the solver may work. Deterministic time stops it, so that the same request gives the same plan.</summary>
public sealed record SolveBudget
{
    /// <summary>CP-SAT's deterministic time, its own unit.</summary>
    public double DeterministicTime { get; init; } = 4;

    /// <summary>Wall-clock guard, s; far above what deterministic time usually takes.</summary>
    public double WallSeconds { get; init; } = 60;
}
