using System.Collections.Immutable;
using Google.OrTools.LinearSolver;
using Google.OrTools.Sat;
using LinearConstraint = Google.OrTools.LinearSolver.Constraint;

namespace Jumpwright.Planning;

/// <summary>
/// The linear relaxation of one athlete's model, kept warm while the prices of kit change. What it proves is recomputed from
/// its duals in whole numbers: by weak duality any duals of the right signs bound every plan, so rounding them costs a little
/// tightness and no truth.
/// </summary>
internal sealed class PricedRelaxation : IDisposable
{
    /// <summary>Duals are rounded to so many parts of a thousandth of a point.</summary>
    private const long Parts = 1_000_000;

    private const long Unbounded = 1_000_000_000_000_000;

    private readonly Solver _solver;
    private readonly Variable[] _variables;
    private readonly List<(int[] Columns, long[] Factors, long Low, long High)> _rows = [];
    private readonly List<int> _constraintOf = [];
    private readonly List<LinearConstraint> _constraints = [];
    private readonly HashSet<int> _coupling;
    private readonly Dictionary<int, (string Session, string Exercise, int Literal)> _literals;
    private long _sign = 1;
    private readonly long[] _low;
    private readonly long[] _high;
    private readonly long[] _points;
    private readonly ImmutableArray<(int Column, (string Kit, string Session) Key, long Seconds)> _uses;

    /// <summary>From a model whose objective was made without prices.</summary>
    public PricedRelaxation(SquadModel squad)
    {
        CpModelProto model = squad.Model.Model;
        _solver = Solver.CreateSolver("GLOP");
        _low = [.. model.Variables.Select(v => v.Domain[0])];
        _high = [.. model.Variables.Select(v => v.Domain[^1])];
        _variables = [.. model.Variables.Select(v => _solver.MakeNumVar(v.Domain[0], v.Domain[^1], ""))];
        _coupling = squad.Coupling;
        _literals = squad
            .Choices.SelectMany(c =>
                c.More.Select((m, n) => (m.Index, Literal: n + 1))
                    .Append((c.Done.Index, Literal: 0))
                    .Select(l => (l.Index, Name: (c.Slot.Id, c.Exercise.Id, l.Literal)))
            )
            .ToDictionary(l => l.Index, l => l.Name);
        for (int i = 0; i < model.Constraints.Count; i++)
        {
            AddRows(model.Constraints[i]);
            while (_constraintOf.Count < _rows.Count)
            {
                _constraintOf.Add(i);
            }
        }

        foreach ((int[] columns, long[] factors, long low, long high) in _rows)
        {
            LinearConstraint row = _solver.MakeConstraint(
                low <= -Unbounded ? double.NegativeInfinity : low,
                high >= Unbounded ? double.PositiveInfinity : high
            );
            for (int i = 0; i < columns.Length; i++)
            {
                row.SetCoefficient(_variables[columns[i]], factors[i]);
            }

            _constraints.Add(row);
        }

        // CP-SAT keeps a maximisation as a minimisation of the negative.
        long sign = model.Objective.ScalingFactor < 0 ? -1 : 1;
        _points = new long[_variables.Length];
        for (int i = 0; i < model.Objective.Vars.Count; i++)
        {
            _points[model.Objective.Vars[i]] += sign * model.Objective.Coeffs[i];
        }

        _solver.Objective().SetMaximization();
        // A third of the time of the solver's own choice (measured on the bench squads), with the same optimum.
        _ = _solver.SetSolverSpecificParametersAsString("use_dual_simplex:true use_preprocessing:false");
        _uses =
        [
            .. from choice in squad.Choices
            from use in KitUse.Of(choice.Exercise, choice.Phase)
            let each = (long)use.Count * choice.KitSecondsOfOneSet
            let key = (use.Key, choice.Slot.Id)
            from column in choice
                .More.Select(m => (m.Index, Seconds: each))
                .Append((choice.Done.Index, Seconds: each * choice.Menu.Dose.SetsMin))
            select (column.Index, key, column.Seconds),
        ];
    }

    /// <summary>True when the last <see cref="At"/> found its optimum.</summary>
    public bool IsSolved { get; private set; }

    /// <summary>Solves at these prices.</summary>
    /// <returns>
    /// A proven bound in thousandths of a point, less what kit costs; the kit that the relaxation would use; and the share of
    /// every column in it.
    /// </returns>
    public (long? Bound, Dictionary<(string Kit, string Session), double> Use) At(
        IReadOnlyDictionary<(string Kit, string Session), long> prices
    )
    {
        long[] points = [.. _points];
        foreach (var (column, key, seconds) in _uses)
        {
            if (prices.TryGetValue(key, out long price))
            {
                points[column] -= price * seconds;
            }
        }

        for (int i = 0; i < points.Length; i++)
        {
            _solver.Objective().SetCoefficient(_variables[i], points[i]);
        }

        IsSolved = _solver.Solve() == Solver.ResultStatus.OPTIMAL;
        if (!IsSolved)
        {
            return (null, []);
        }

        Dictionary<(string, string), double> use = [];
        foreach (var (column, key, seconds) in _uses)
        {
            use[key] = use.GetValueOrDefault(key) + (seconds * _variables[column].SolutionValue());
        }

        long[] duals = [.. _constraints.Select(c => (long)Math.Round(c.DualValue() * Parts))];
        Int128 one = Proven(points, duals, 1);
        Int128 other = Proven(points, duals, -1);
        _sign = one <= other ? 1 : -1;
        Int128 least = one < other ? one : other;
        Int128 whole = least >= 0 ? least / Parts : -((-least + Parts - 1) / Parts);
        return ((long)whole, use);
    }

    /// <summary>
    /// After <see cref="At"/>: the rows that tie weeks together, each with its price in parts of a thousandth of a point. Taken into the
    /// objective they leave weeks that can be solved one by one; any prices of the right sign give a true bound.
    /// </summary>
    /// <param name="fine">How many parts.</param>
    public ImmutableArray<Tie> Ties(long fine) =>
        [
            .. from i in Enumerable.Range(0, _rows.Count)
            where _coupling.Contains(_constraintOf[i])
            let row = _rows[i]
            select new Tie(
                [.. row.Columns.Select(c => _literals[c])],
                [.. row.Factors],
                row.Low > -Unbounded ? row.Low : null,
                row.High < Unbounded ? row.High : null,
                _sign * _constraints[i].DualValue() * fine
            ),
        ];

    /// <summary>
    /// After <see cref="At"/>: what later sessions gain from each literal through the rows that tie them, in parts of a thousandth
    /// of a point: more load in one week lets the next grow, and an easy exercise opens a hard one.
    /// </summary>
    /// <param name="fine">How many parts.</param>
    /// <param name="weekOf">The week of a session, counted on.</param>
    public ImmutableDictionary<(string, string, int), long> Ahead(long fine, Func<string, int> weekOf)
    {
        Dictionary<(string, string, int), long> ahead = [];
        foreach ((int[] columns, long[] factors, _, _, long dual) in TyingPrices(fine))
        {
            int last = columns.Max(c => weekOf(_literals[c].Session));
            for (int j = 0; j < columns.Length; j++)
            {
                var name = _literals[columns[j]];
                if (weekOf(name.Session) < last)
                {
                    ahead[name] = ahead.GetValueOrDefault(name) - (dual * factors[j]);
                }
            }
        }

        return ahead.ToImmutableDictionary();
    }

    public void Dispose() => _solver.Dispose();

    /// <summary>The rows that tie weeks together, each with its price where that has the right sign, in parts of a thousandth of a point.</summary>
    private IEnumerable<(int[] Columns, long[] Factors, long Low, long High, long Dual)> TyingPrices(long fine)
    {
        for (int i = 0; i < _rows.Count; i++)
        {
            if (!_coupling.Contains(_constraintOf[i]))
            {
                continue;
            }

            (int[] columns, long[] factors, long low, long high) = _rows[i];
            long dual = _sign * (long)Math.Round(_constraints[i].DualValue() * fine);
            if (dual != 0 && (dual <= 0 || high < Unbounded) && (dual >= 0 || low > -Unbounded))
            {
                yield return (columns, factors, low, high, dual);
            }
        }
    }

    /// <summary>Σ dual × right side + Σ best of what each column has left, in parts of a thousandth of a point.</summary>
    private Int128 Proven(long[] points, long[] duals, long sign)
    {
        Int128 sum = 0;
        Int128[] left = [.. points.Select(p => (Int128)p * Parts)];
        for (int i = 0; i < _rows.Count; i++)
        {
            (int[] columns, long[] factors, long low, long high) = _rows[i];
            long dual = sign * duals[i];
            if (dual == 0 || (dual > 0 && high >= Unbounded) || (dual < 0 && low <= -Unbounded))
            {
                continue;
            }

            sum += (Int128)dual * (dual > 0 ? high : low);
            for (int j = 0; j < columns.Length; j++)
            {
                left[columns[j]] -= (Int128)dual * factors[j];
            }
        }

        for (int j = 0; j < left.Length; j++)
        {
            sum += left[j] > 0 ? left[j] * _high[j] : left[j] * _low[j];
        }

        return sum;
    }

    /// <summary>The rows of a constraint; none for what a relaxation may leave out (sums that hold only under a condition).</summary>
    private void AddRows(ConstraintProto constraint)
    {
        int[] conditions = [.. constraint.EnforcementLiteral];
        switch (constraint.ConstraintCase)
        {
            case ConstraintProto.ConstraintOneofCase.Linear when conditions.Length == 0:
                var linear = constraint.Linear;
                Add([.. linear.Vars.Select((v, i) => (v, linear.Coeffs[i]))], linear.Domain[0], linear.Domain[^1]);
                break;
            case ConstraintProto.ConstraintOneofCase.BoolOr:
                Add(
                    [.. constraint.BoolOr.Literals.Concat(conditions.Select(c => -c - 1)).Select(l => (l, 1L))],
                    1,
                    Unbounded
                );
                break;
            case ConstraintProto.ConstraintOneofCase.BoolAnd:
                foreach (int literal in constraint.BoolAnd.Literals)
                {
                    Add([(literal, 1), .. conditions.Select(c => (-c - 1, 1L))], 1, Unbounded);
                }

                break;
            case ConstraintProto.ConstraintOneofCase.AtMostOne when conditions.Length == 0:
                Add([.. constraint.AtMostOne.Literals.Select(l => (l, 1L))], -Unbounded, 1);
                break;
            default:
                break;
        }
    }

    /// <summary>A negated literal −l−1 is 1 − its variable: its factor turns round and the sides move.</summary>
    private void Add(ImmutableArray<(int Literal, long Factor)> terms, long low, long high)
    {
        Dictionary<int, long> sum = [];
        long moved = 0;
        foreach ((int literal, long factor) in terms)
        {
            int column = literal >= 0 ? literal : -literal - 1;
            sum[column] = sum.GetValueOrDefault(column) + (literal >= 0 ? factor : -factor);
            moved += literal >= 0 ? 0 : factor;
        }

        var factors = sum.Where(s => s.Value != 0).OrderBy(s => s.Key).ToList();
        _rows.Add(
            (
                [.. factors.Select(f => f.Key)],
                [.. factors.Select(f => f.Value)],
                low <= -Unbounded ? low : low - moved,
                high >= Unbounded ? high : high - moved
            )
        );
    }
}
