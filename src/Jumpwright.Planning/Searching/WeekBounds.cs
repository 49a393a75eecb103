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
    private readonly ImmutableDictionary<(string Session, string Exercise, int Literal), long> _extra = [];
    private readonly ImmutableArray<IGrouping<NodaTime.LocalDate, SessionSlot>> _weeks = [];
    private readonly long _constant;
    private readonly long?[] _bounds = [];
    private readonly long[] _plans = [];
    private readonly bool[] _proven = [];

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
            (_extra, _constant) = relaxation.Untied(Fine);
            _weeks = [.. squad.Slots.GroupBy(s => PlanRequest.WeekOf(s.Date))];
            var weekOf = _weeks.SelectMany((w, n) => w.Select(s => (s.Id, n))).ToDictionary(s => s.Id, s => s.n);
            Ahead = relaxation.Ahead(Fine, s => weekOf[s]);
            _bounds = new long?[_weeks.Length];
            _plans = new long[_weeks.Length];
            _proven = new bool[_weeks.Length];
        }
    }

    public int Count => _weeks.Length;

    /// <summary>What later weeks gain from each literal of earlier ones.</summary>
    public ImmutableDictionary<(string Session, string Exercise, int Literal), long> Ahead { get; } = [];

    /// <summary>Proven: nothing this athlete does is worth more at these prices, in thousandths; null when not proven.</summary>
    public long? Bound =>
        Count > 0 && _bounds.All(b => b is not null)
            ? (long)Math.Floor((double)(_constant + _bounds.Sum(b => b!.Value)) / Fine) + 1
            : null;

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
        _proven[week] |= solution.Status == CpSolverStatus.Optimal;
        return solution.DeterministicTime;
    }
}
