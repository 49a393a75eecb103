using System.Collections.Immutable;
using Google.OrTools.Sat;
using Jumpwright.Plans;

namespace Jumpwright.Planning;

/// <summary>What one search gave.</summary>
/// <param name="Status">CP-SAT's word for it.</param>
/// <param name="Points">
/// Points of the best plan, added up from its items (the solver may leave points on the table that its plan has);
/// null without one.
/// </param>
/// <param name="BoundInThousandths">
/// No plan of this model has more, in thousandths of a point and less what kit costs; null when nothing is proven.
/// </param>
/// <param name="Chosen">The best plan.</param>
internal sealed record Solution(
    CpSolverStatus Status,
    long? Points,
    long? BoundInThousandths,
    ImmutableArray<Chosen> Chosen
)
{
    /// <summary>Deterministic time that was used.</summary>
    public double DeterministicTime { get; private init; }

    /// <summary>The model's own objective of the best plan: prices and what else was added to it counted.</summary>
    public long? InThousandths { get; private init; }

    /// <summary>Solves a model.</summary>
    public static Solution Of(
        SquadModel squad,
        double deterministicTime,
        double wallSeconds,
        double gap,
        bool small = false
    )
    {
        CpSolver solver = new()
        {
            StringParameters = Parameters.Of(deterministicTime, wallSeconds, gap, lines: true, small),
        };
        CpSolverStatus status = solver.Solve(squad.Model);
        if (status is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible))
        {
            return new(status, null, null, []) { DeterministicTime = solver.Response!.DeterministicTime };
        }

        ImmutableArray<Chosen> chosen =
        [
            .. squad
                .Choices.Where(c => solver.BooleanValue(c.Done))
                .Select(c => new Chosen(c.Who, c.Slot, c.Menu, c.Exercise, c.SetsIn(solver))),
        ];
        return new(
            status,
            PlanPoints.Of(chosen.Select(c => (c.Who.Athlete.Id, c.Slot.Id, c.Exercise.Id, c.Sets)), squad.Request),
            // The model's numbers are whole, so the bound may be rounded down to a whole one.
            double.IsFinite(solver.BestObjectiveBound)
                ? (long)Math.Floor(solver.BestObjectiveBound + 1e-6)
                : null,
            chosen
        )
        {
            DeterministicTime = solver.Response!.DeterministicTime,
            InThousandths = (long)Math.Round(solver.ObjectiveValue),
        };
    }

    /// <summary>The bound in points, without prices.</summary>
    public long? Bound => BoundInThousandths is { } bound ? (long)Math.Floor((double)bound / Scope.PointScale) : null;
}
