using System.Collections.Immutable;
using Google.OrTools.LinearSolver;
using Google.OrTools.Sat;

namespace Jumpwright.Planning;

/// <summary>
/// First prices for kit: the duals of its rows in the linear relaxation of the whole squad's model. Any prices give a true
/// bound, so nothing here has to be exact; good ones save rounds.
/// </summary>
internal static class LinearRelaxation
{
    /// <summary>Prices in thousandths of a point a second; none when the relaxation could not be solved.</summary>
    public static ImmutableDictionary<(string Kit, string Session), long> Prices(SquadModel squad)
    {
        CpModelProto model = squad.Model.Model;
        using Solver solver = Solver.CreateSolver("GLOP");
        Variable[] variables = [.. model.Variables.Select(v => solver.MakeNumVar(v.Domain[0], v.Domain[^1], ""))];
        Dictionary<int, Google.OrTools.LinearSolver.Constraint> kitRows = [];
        for (int i = 0; i < model.Constraints.Count; i++)
        {
            if (Row(model.Constraints[i], variables, solver) is { } row && squad.KitRows.ContainsKey(i))
            {
                kitRows[i] = row;
            }
        }

        // CP-SAT keeps a maximisation as a minimisation of the negative.
        double sign = model.Objective.ScalingFactor < 0 ? -1 : 1;
        for (int i = 0; i < model.Objective.Vars.Count; i++)
        {
            (int variable, double factor, _) = Literal(model.Objective.Vars[i]);
            solver.Objective().SetCoefficient(variables[variable], sign * factor * model.Objective.Coeffs[i]);
        }

        solver.Objective().SetMaximization();
        return solver.Solve() == Solver.ResultStatus.OPTIMAL
            ? kitRows
                .Select(k => (Key: squad.KitRows[k.Key], Price: (long)Math.Round(Math.Abs(k.Value.DualValue()))))
                .Where(k => k.Price > 0)
                .ToImmutableDictionary(k => k.Key, k => k.Price)
            : ImmutableDictionary<(string, string), long>.Empty;
    }

    /// <summary>The row of a constraint; null for one that holds only under a condition, which a relaxation may leave out.</summary>
    private static Google.OrTools.LinearSolver.Constraint? Row(
        ConstraintProto constraint,
        Variable[] variables,
        Solver solver
    )
    {
        int[] unless = [.. constraint.EnforcementLiteral.Select(l => -l - 1)];
        switch (constraint.ConstraintCase)
        {
            case ConstraintProto.ConstraintOneofCase.Linear when unless.Length == 0:
                var linear = constraint.Linear;
                var row = solver.MakeConstraint(
                    linear.Domain[0] < -1e15 ? double.NegativeInfinity : linear.Domain[0],
                    linear.Domain[^1] > 1e15 ? double.PositiveInfinity : linear.Domain[^1]
                );
                for (int i = 0; i < linear.Vars.Count; i++)
                {
                    (int variable, double factor, _) = Literal(linear.Vars[i]);
                    row.SetCoefficient(
                        variables[variable],
                        row.GetCoefficient(variables[variable]) + (factor * linear.Coeffs[i])
                    );
                }

                return row;
            case ConstraintProto.ConstraintOneofCase.BoolOr:
                return Literals(
                    [.. constraint.BoolOr.Literals, .. unless],
                    1,
                    double.PositiveInfinity,
                    variables,
                    solver
                );
            case ConstraintProto.ConstraintOneofCase.AtMostOne when unless.Length == 0:
                return Literals([.. constraint.AtMostOne.Literals], double.NegativeInfinity, 1, variables, solver);
            case ConstraintProto.ConstraintOneofCase.BoolAnd:
                foreach (int literal in constraint.BoolAnd.Literals)
                {
                    Literals([literal, .. unless], 1, double.PositiveInfinity, variables, solver);
                }

                return null;
            default:
                return null;
        }
    }

    private static Google.OrTools.LinearSolver.Constraint Literals(
        int[] literals,
        double least,
        double most,
        Variable[] variables,
        Solver solver
    )
    {
        double once = literals.Sum(l => Literal(l).Once);
        var row = solver.MakeConstraint(least - once, most - once);
        foreach (var same in literals.Select(Literal).GroupBy(l => l.Variable))
        {
            row.SetCoefficient(variables[same.Key], same.Sum(l => l.Factor));
        }

        return row;
    }

    /// <summary>A literal as a variable: itself, or one less it.</summary>
    private static (int Variable, double Factor, double Once) Literal(int reference) =>
        reference >= 0 ? (reference, 1, 0) : (-reference - 1, -1, 1);
}
