using System.Collections.Immutable;
using Google.OrTools.Sat;
using Jumpwright.Plans;

namespace Jumpwright.Planning.Searching;

/// <summary>
/// A tighter bound for one athlete than the linear relaxation gives: what ties the weeks together is priced, and every week is
/// then solved by itself in whole numbers. The prices are the relaxation's duals; any would do.
/// </summary>
internal sealed class WeekBounds
{
    /// <summary>Parts of a thousandth of a point in which duals are counted.</summary>
    public const long Fine = 100;

    private const double ProvenWithin = 0.0005;

    private readonly PlanRequest _request;
    private readonly AthleteRequest _who;
    private readonly ImmutableDictionary<(string Kit, string Session), long> _prices;
    private readonly ImmutableDictionary<(string Kit, string Session), long> _kit;
    private readonly ImmutableDictionary<(string Session, string Exercise), long> _shares;
    private readonly TyingPrices _ties = new([]);
    private readonly ImmutableArray<IGrouping<NodaTime.LocalDate, SessionSlot>> _weeks = [];
    private ImmutableDictionary<(string Session, string Exercise, int Literal), long> _extra = [];
    private long _constant;
    private long? _least;
    private readonly long?[] _bounds = [];
    private readonly long[] _plans = [];
    private readonly bool[] _proven = [];
    private readonly ImmutableArray<Chosen>[] _held = [];

    /// <summary>After the relaxation was solved at these prices.</summary>
    public WeekBounds(
        Squad squad,
        int athlete,
        PricedRelaxation relaxation,
        ImmutableDictionary<(string Kit, string Session), long> prices
    )
    {
        _request = squad.Request;
        _who = squad.Athletes[athlete];
        _prices = prices;
        _kit = squad.KitSeconds;
        _shares = squad.GroupShares;
        if (relaxation.IsSolved)
        {
            _ties = new(relaxation.Ties(Fine));
            (_extra, _constant) = (_ties.Extra(), _ties.Constant);
            _weeks = [.. squad.Slots.GroupBy(s => PlanRequest.WeekOf(s.Date))];
            var weekOf = _weeks.SelectMany((w, n) => w.Select(s => (s.Id, n))).ToDictionary(s => s.Id, s => s.n);
            Ahead = relaxation.Ahead(Fine, s => weekOf[s]);
            _bounds = new long?[_weeks.Length];
            _plans = new long[_weeks.Length];
            _proven = new bool[_weeks.Length];
            _held = [.. _weeks.Select(_ => ImmutableArray<Chosen>.Empty)];
        }
    }

    public int Count => _weeks.Length;

    /// <summary>What later weeks gain from each literal of earlier ones.</summary>
    public ImmutableDictionary<(string Session, string Exercise, int Literal), long> Ahead { get; } = [];

    /// <summary>Proven: nothing this athlete does is worth more at these prices, in thousandths; null when not proven.</summary>
    public long? Bound => Least is { } least ? (long)Math.Floor((double)least / Fine) + 1 : null;

    /// <summary>What the weeks prove at the prices of now, in parts of a thousandth; null while one of them proves nothing.</summary>
    private long? Now => Count > 0 && _bounds.All(b => b is not null) ? _constant + _bounds.Sum(b => b!.Value) : null;

    /// <summary>The least that was proven at any prices.</summary>
    private long? Least => Now is { } now ? Math.Min(now, _least ?? now) : _least;

    /// <summary>Rounds of prices in a row that proved nothing better.</summary>
    public int Failures { get; private set; }

    /// <summary>
    /// All weeks at other prices of what ties them, after all were solved at those of now; gives the deterministic time, and 0 when no other
    /// prices are known.
    /// </summary>
    /// <param name="eachWeek">Deterministic time that a week gets at most.</param>
    public double Again(double eachWeek)
    {
        if (Now is not { } now || !_ties.Change(now, _least ?? long.MaxValue, _held.SelectMany(Literals).ToHashSet()))
        {
            return 0;
        }

        _least = Least;
        (_extra, _constant) = (_ties.Extra(), _ties.Constant);
        double spent = 0;
        for (int week = 0; week < Count; week++)
        {
            (_bounds[week], _plans[week], _proven[week]) = (null, 0, false);
            spent += Prove(week, eachWeek);
        }

        Failures = Now < _least ? 0 : Failures + 1;
        return spent;
    }

    private static IEnumerable<(string, string, int)> Literals(ImmutableArray<Chosen> held) =>
        held.SelectMany(c =>
            Enumerable.Range(0, c.Sets - c.Menu.Dose.SetsMin + 1).Select(n => (c.Slot.Id, c.Exercise.Id, n))
        );

    public bool IsProven(int week) => _proven[week];

    /// <summary>How far the bound of a week lies above its best plan.</summary>
    public long Open(int week) => _bounds[week] is { } bound ? bound - _plans[week] : long.MaxValue;

    /// <summary>Solves a week for so long; gives the deterministic time that it took.</summary>
    public double Prove(int week, double deterministicTime)
    {
        (PlanRequest one, AthleteRequest own) = OneWeek.Of(_request, _who, _weeks[week]);
        if (own.Menu.IsEmpty)
        {
            _bounds[week] = 0;
            _proven[week] = true;
            return 0;
        }

        var ids = one.Slots.Select(s => s.Id).ToHashSet(StringComparer.Ordinal);
        Scope scope = new()
        {
            Only = [own],
            KitSeconds = _kit,
            GroupShares = _shares,
            Prices = _prices.Where(p => ids.Contains(p.Key.Session)).ToImmutableDictionary(),
            Fine = Fine,
            Extra = _extra.Where(e => ids.Contains(e.Key.Session)).ToImmutableDictionary(),
        };
        Solution solution = Solution.Of(
            SquadModel.Of(one, Asked.All(), scope),
            deterministicTime,
            _request.Budget.WallSeconds,
            ProvenWithin,
            small: true
        );
        if (solution.BoundInThousandths is { } bound && (_bounds[week] is not { } before || bound < before))
        {
            _bounds[week] = bound;
        }

        _plans[week] = Math.Max(_plans[week], solution.InThousandths ?? 0);
        _held[week] = solution.Chosen;
        _proven[week] |= solution.Status == CpSolverStatus.Optimal;
        return solution.DeterministicTime;
    }
}
