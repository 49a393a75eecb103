using System.Diagnostics;
using Google.OrTools.LinearSolver;
using Google.OrTools.Sat;
using Jumpwright.Plans;

namespace Jumpwright.Planning.Bench;

/// <summary>
/// The whole squad as one plain MILP, for SCIP or HiGHS. Sums that hold only under a condition (equal sets of a contrast pair) are left
/// out, which makes it easier, and time lines are not asked for.
/// </summary>
internal static class MilpBench
{
    public static void Run(string name, int seed, int athletes, double seconds, TextWriter to)
    {
        PlanRequest request = BenchSquads.Of(seed, athletes);
        SquadModel squad = SquadModel.Of(request, Asked.All(), new Scope());
        CpModelProto model = squad.Model.Model;
        using Solver solver = Solver.CreateSolver(name);
        Variable[] columns =
        [
            .. model.Variables.Select((v, i) => solver.MakeIntVar(v.Domain[0], v.Domain[^1], $"x{i}")),
        ];
        foreach (ConstraintProto constraint in model.Constraints)
        {
            Add(solver, columns, constraint);
        }

        long sign = model.Objective.ScalingFactor < 0 ? -1 : 1;
        for (int i = 0; i < model.Objective.Vars.Count; i++)
        {
            solver.Objective().SetCoefficient(columns[model.Objective.Vars[i]], sign * model.Objective.Coeffs[i]);
        }

        solver.Objective().SetMaximization();
        solver.SetTimeLimit((long)(1000 * seconds));
        var watch = Stopwatch.StartNew();
        Solver.ResultStatus status = solver.Solve();
        bool has = status is Solver.ResultStatus.OPTIMAL or Solver.ResultStatus.FEASIBLE;
        to.WriteLine(
            $"{name}, seed {seed}, {athletes} athletes, {columns.Length} columns, {solver.NumConstraints()} rows: {status} after {watch.Elapsed.TotalSeconds:0} s"
                + (
                    has
                        ? $", {solver.Objective().Value() / 1000:0} of at most {solver.Objective().BestBound() / 1000:0}"
                        : ", no plan"
                )
        );
    }

    private static void Add(Solver solver, Variable[] columns, ConstraintProto constraint)
    {
        int[] conditions = [.. constraint.EnforcementLiteral];
        switch (constraint.ConstraintCase)
        {
            case ConstraintProto.ConstraintOneofCase.Linear when conditions.Length == 0:
                Row(
                    solver,
                    columns,
                    [.. constraint.Linear.Vars.Select((v, i) => (v, (double)constraint.Linear.Coeffs[i]))],
                    constraint.Linear.Domain[0],
                    constraint.Linear.Domain[^1]
                );
                break;
            case ConstraintProto.ConstraintOneofCase.BoolOr:
                Row(
                    solver,
                    columns,
                    [.. constraint.BoolOr.Literals.Concat(conditions.Select(c => -c - 1)).Select(l => (l, 1.0))],
                    1,
                    double.PositiveInfinity
                );
                break;
            case ConstraintProto.ConstraintOneofCase.BoolAnd:
                foreach (int literal in constraint.BoolAnd.Literals)
                {
                    Row(
                        solver,
                        columns,
                        [(literal, 1), .. conditions.Select(c => (-c - 1, 1.0))],
                        1,
                        double.PositiveInfinity
                    );
                }

                break;
            case ConstraintProto.ConstraintOneofCase.AtMostOne when conditions.Length == 0:
                Row(
                    solver,
                    columns,
                    [.. constraint.AtMostOne.Literals.Select(l => (l, 1.0))],
                    double.NegativeInfinity,
                    1
                );
                break;
            default:
                break;
        }
    }

    private static void Row(
        Solver solver,
        Variable[] columns,
        (int Literal, double Factor)[] terms,
        double low,
        double high
    )
    {
        double moved = terms.Where(t => t.Literal < 0).Sum(t => t.Factor);
        var row = solver.MakeConstraint(
            low < -1e15 ? double.NegativeInfinity : low - moved,
            high > 1e15 ? double.PositiveInfinity : high - moved
        );
        foreach ((int literal, double factor) in terms)
        {
            Variable column = columns[literal >= 0 ? literal : -literal - 1];
            row.SetCoefficient(column, row.GetCoefficient(column) + (literal >= 0 ? factor : -factor));
        }
    }
}
