using System.Collections.Immutable;
using Google.OrTools.Sat;
using Jumpwright.Plans;
using Jumpwright.Quantities;

namespace Jumpwright.Planning.Searching;

/// <summary>
/// The proven bound. It knows every limit but the time lines: what an athlete's linear relaxation or weeks prove
/// at prices for kit, summed, and the price of all kit.
/// </summary>
internal sealed class SquadBound : IDisposable
{
    private const long Unknown = long.MaxValue / 1000;

    /// <summary>Deterministic time that a week gets before it is known which are hard: most are proven in less.</summary>
    private const double FirstEach = 0.15;

    /// <summary>Deterministic time that a round of weeks is taken to take at least: their models are made anew.</summary>
    private const double RoundAtLeast = 0.01;

    /// <summary>Rounds that may prove nothing better before prices count as found.</summary>
    private const int FailedMost = 8;

    /// <summary>The share of the bound that better prices are hoped to take off it at first.</summary>
    private const double Hoped = 0.002;

    private readonly Squad _squad;
    private readonly CancellationToken _cancel;
    private readonly PricedRelaxation[] _relaxations;
    private long[] _lines;
    private WeekBounds[] _weeks = [];
    private long _bound = long.MaxValue;

    public SquadBound(Squad squad, CancellationToken cancel)
    {
        _squad = squad;
        _cancel = cancel;
        Prices = new long[squad.Kit.Length];
        _relaxations = new PricedRelaxation[squad.Athletes.Length];
        _lines = new long[squad.Athletes.Length];
        try
        {
            Parallel.For(0, _relaxations.Length, Squad.Two(cancel), i => _relaxations[i] = new(ModelOf(i)));
        }
        catch
        {
            Dispose();
            throw;
        }
    }

    /// <summary>No plan has more.</summary>
    public long Points => _bound / Scope.PointScale;

    /// <summary>The prices of kit that proved most, thousandths of a point for a second.</summary>
    public long[] Prices { get; private set; }

    /// <summary>Begins with these prices instead of none.</summary>
    /// <param name="prices">Thousandths of a point for a second, by kit and session.</param>
    public void Start(ImmutableDictionary<(string Kit, string Session), long> prices) =>
        Prices = [.. _squad.Kit.Select(k => prices.GetValueOrDefault(k))];

    /// <summary>Rounds of prices: dearer where more is asked for than there is, cheaper where less (after Polyak).</summary>
    /// <param name="rounds">How many.</param>
    /// <param name="told">Told how far it is.</param>
    /// <returns>Null; or how it ended, when somebody has no plan at all.</returns>
    public Found? Price(int rounds, IProgress<Sentence>? told)
    {
        HopedStep hoped = new(Hoped);
        double[] direction = new double[Prices.Length];
        long[] now = [.. Prices];
        int failed = 0;
        for (int round = 0; round < rounds; round++)
        {
            var priced = _squad.ByKit(now);
            var at = new (long? Bound, Dictionary<(string, string), double> Use)[_relaxations.Length];
            var weeks = new WeekBounds[at.Length];
            Parallel.For(
                0,
                at.Length,
                Squad.Two(_cancel),
                i =>
                {
                    at[i] = _relaxations[i].At(priced);
                    weeks[i] = new(_squad, i, _relaxations[i], priced);
                }
            );
            for (int i = 0; i < at.Length; i++)
            {
                if (at[i].Bound is not null)
                {
                    continue;
                }

                // The relaxation was not solved: the exact model says whether there is anything at all.
                Solution alone = Solution.Of(ModelOf(i), 4, _squad.Request.Budget.WallSeconds, 0);
                if (alone.Points is null || alone.BoundInThousandths is null)
                {
                    return Found.Nothing(
                        alone.Status == CpSolverStatus.Infeasible ? PlanStatus.Infeasible : PlanStatus.NoneFound
                    );
                }

                at[i] = (alone.BoundInThousandths, []);
            }

            long proven = at.Sum(a => a.Bound!.Value) + WorthOfKit(now);
            if (proven < _bound)
            {
                _bound = proven;
                Prices = [.. now];
                // What the duals say of the weeks is kept at once: solving the best round again would cost as much as the round.
                _lines = [.. at.Select(a => a.Bound!.Value)];
                _weeks = weeks;
            }
            else if (++failed >= FailedMost)
            {
                break;
            }
            else
            {
                hoped.Failed();
            }

            told?.Report($"prices, round {round + 1}: no plan can have more than {Points} points");
            double length = 0;
            for (int k = 0; k < now.Length; k++)
            {
                double over = at.Sum(a => a.Use.GetValueOrDefault(_squad.Kit[k])) - _squad.Most[k];
                direction[k] = now[k] == 0 && over < 0 ? 0 : (0.6 * over) + (0.4 * direction[k]);
                length += direction[k] * direction[k];
            }

            if (length <= 1)
            {
                break;
            }

            double step = hoped.Of(proven, _bound, length);
            for (int k = 0; k < now.Length; k++)
            {
                now[k] = (long)Math.Max(0, Math.Round(now[k] + (step * direction[k])));
            }
        }

        return null;
    }

    /// <summary>What an athlete's later weeks gain from each literal of earlier ones, at the relaxation's duals.</summary>
    public ImmutableDictionary<(string Session, string Exercise, int Literal), long> Ahead(int athlete) =>
        _weeks[athlete].Ahead;

    /// <summary>
    /// The bound in whole numbers at the best prices: athlete by athlete, week by week, first those with much to choose from,
    /// since their relaxation lies furthest above their plans. What then is left of the budget goes to the weeks that are not
    /// proven yet.
    /// </summary>
    /// <param name="budget">Deterministic time for the whole squad.</param>
    /// <param name="more">Whether what is left after that goes into better prices of what ties weeks together.</param>
    public void ByWeeks(double budget, bool more = true)
    {
        double spent = 0;
        double[] cost = new double[_weeks.Length];
        foreach (int i in Enumerable.Range(0, _weeks.Length).OrderByDescending(Choice))
        {
            for (int week = 0; week < _weeks[i].Count && spent < budget; week++)
            {
                _cancel.ThrowIfCancellationRequested();
                double took = _weeks[i].Prove(week, FirstEach);
                spent += took;
                cost[i] += took;
            }
        }

        // The widest open weeks first: there is most to win.
        var open = _weeks
            .SelectMany(w => Enumerable.Range(0, w.Count).Select(n => (Of: w, Week: n)))
            .Where(a => !a.Of.IsProven(a.Week))
            .OrderByDescending(a => a.Of.Open(a.Week))
            .ToList();
        for (int n = 0; n < open.Count && budget - spent > FirstEach; n++)
        {
            _cancel.ThrowIfCancellationRequested();
            double share = Math.Max(2 * FirstEach, 2 * (budget - spent) / (open.Count - n));
            spent += open[n].Of.Prove(open[n].Week, Math.Min(share, budget - spent));
        }

        if (more)
        {
            ByTyingPrices(budget - spent, cost);
        }

        long sum = _lines.Select((line, i) => Math.Min(line, _weeks[i].Bound ?? Unknown)).Sum();
        _bound = Math.Min(_bound, sum + WorthOfKit(Prices));
    }

    public void Dispose()
    {
        foreach (PricedRelaxation? relaxation in _relaxations)
        {
            relaxation?.Dispose();
        }
    }

    /// <summary>
    /// Better prices of what ties weeks together, one athlete at a time: whoever's last round took most off the bound for its time is next.
    /// </summary>
    /// <param name="budget">Deterministic time for the whole squad.</param>
    /// <param name="cost">What a round of each athlete took so far.</param>
    private void ByTyingPrices(double budget, double[] cost)
    {
        double[] hope = [.. _weeks.Select(w => w.Bound is { } b ? TyingPrices.Hoped * b : 0)];
        for (double spent = 0; spent < budget; )
        {
            _cancel.ThrowIfCancellationRequested();
            int next = Enumerable.Range(0, hope.Length).MaxBy(i => hope[i] / (RoundAtLeast + cost[i]));
            if (hope[next] <= 0 || _weeks[next].Bound is not { } before)
            {
                return;
            }

            double took = _weeks[next].Again(FirstEach);
            cost[next] = took;
            spent += took + RoundAtLeast;
            hope[next] =
                took == 0 || _weeks[next].Failures >= FailedMost ? 0
                : _weeks[next].Failures > 0 ? 0.7 * hope[next]
                : (0.5 * hope[next]) + before - _weeks[next].Bound!.Value;
        }
    }

    private double Choice(int athlete) => (double)_lines[athlete] * _squad.Athletes[athlete].Menu.Length;

    private SquadModel ModelOf(int athlete) =>
        SquadModel.Of(
            _squad.Request,
            Asked.All(),
            new Scope
            {
                Only = [_squad.Athletes[athlete]],
                KitSeconds = _squad.KitSeconds,
                GroupShares = _squad.GroupShares,
            }
        );

    private long WorthOfKit(long[] prices) => prices.Select((p, k) => p * _squad.Most[k]).Sum();
}
