using System.Diagnostics;
using Google.OrTools.ModelBuilder;
using Google.OrTools.Sat;
using Jumpwright.Plans;

namespace Jumpwright.Planning.Bench;

/// <summary>
/// The whole squad as one plain MILP, for SCIP or HiGHS. Sums that hold only under a condition (equal sets of a contrast pair) are left
/// out, which makes it easier, and time lines are not asked for.
/// </summary>
internal static class MilpBench
{
    private const double Endless = 1e15;

    public static void Run(string name, int seed, int athletes, double seconds, TextWriter to)
    {
        PlanRequest request = BenchSquads.Of(seed, athletes);
        CpModelProto from = SquadModel.Of(request, Asked.All(), new Scope()).Model.Model;
        Model model = new();
        ModelBuilderHelper rows = model.Helper;
        Variable[] columns = [.. from.Variables.Select((v, i) => model.NewIntVar(v.Domain[0], v.Domain[^1], $"x{i}"))];
        foreach (ConstraintProto constraint in from.Constraints)
        {
            Add(rows, columns, constraint);
        }

        long sign = from.Objective.ScalingFactor < 0 ? -1 : 1;
        for (int i = 0; i < from.Objective.Vars.Count; i++)
        {
            rows.SetVarObjectiveCoefficient(columns[from.Objective.Vars[i]].Index, sign * from.Objective.Coeffs[i]);
        }

        rows.SetMaximize(true);
        Solver solver = new(name);
        if (!solver.SolverIsSupported())
        {
            to.WriteLine($"{name} is not in this build of OR-Tools.");
            return;
        }

        solver.SetTimeLimitInSeconds(seconds);
        var watch = Stopwatch.StartNew();
        TimeSpan cpu = Process.GetCurrentProcess().TotalProcessorTime;
        SolveStatus status = solver.Solve(model);
        double busy = (Process.GetCurrentProcess().TotalProcessorTime - cpu).TotalSeconds;
        string size =
            $"{name}, seed {seed}, {athletes} athletes, {columns.Length} columns, {rows.ConstraintsCount()} rows";
        string plan = solver.HasSolution() ? $"{solver.ObjectiveValue / 1000:0} points" : "no plan";
        double bound = solver.HasSolution() ? solver.BestObjectiveBound / 1000 : Endless;
        string proven = bound < Endless / 1000 ? $"at most {bound:0}" : "no bound";
        to.WriteLine(
            $"{size}: {status} after {watch.Elapsed.TotalSeconds:0} s on the clock, {busy:0} s of processor: {plan}, {proven}"
        );
    }

    private static void Add(ModelBuilderHelper rows, Variable[] columns, ConstraintProto constraint)
    {
        int[] conditions = [.. constraint.EnforcementLiteral];
        switch (constraint.ConstraintCase)
        {
            case ConstraintProto.ConstraintOneofCase.Linear when conditions.Length == 0:
                Row(
                    rows,
                    columns,
                    [.. constraint.Linear.Vars.Select((v, i) => (v, (double)constraint.Linear.Coeffs[i]))],
                    constraint.Linear.Domain[0],
                    constraint.Linear.Domain[^1]
                );
                break;
            case ConstraintProto.ConstraintOneofCase.BoolOr:
                Row(
                    rows,
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
                        rows,
                        columns,
                        [(literal, 1), .. conditions.Select(c => (-c - 1, 1.0))],
                        1,
                        double.PositiveInfinity
                    );
                }

                break;
            case ConstraintProto.ConstraintOneofCase.AtMostOne when conditions.Length == 0:
                Row(
                    rows,
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

    /// <summary>A negated literal is one less its variable: its factor turns round and the sides move.</summary>
    private static void Row(
        ModelBuilderHelper rows,
        Variable[] columns,
        (int Literal, double Factor)[] terms,
        double low,
        double high
    )
    {
        double moved = terms.Where(t => t.Literal < 0).Sum(t => t.Factor);
        int row = rows.AddLinearConstraint();
        rows.SetConstraintLowerBound(row, low < -Endless ? double.NegativeInfinity : low - moved);
        rows.SetConstraintUpperBound(row, high > Endless ? double.PositiveInfinity : high - moved);
        foreach (var same in terms.GroupBy(t => t.Literal >= 0 ? t.Literal : -t.Literal - 1))
        {
            rows.AddConstraintTerm(row, columns[same.Key].Index, same.Sum(t => t.Literal >= 0 ? t.Factor : -t.Factor));
        }
    }
}
