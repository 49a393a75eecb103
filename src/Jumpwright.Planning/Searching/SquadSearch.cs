using System.Collections.Immutable;
using Google.OrTools.Sat;
using Jumpwright.Planning.Rotations;
using Jumpwright.Plans;

namespace Jumpwright.Planning.Searching;

/// <summary>
/// A larger squad. Athletes share nothing but kit; a price for each second of each kit in each session takes that tie away
/// (Lagrangian relaxation), and what the athletes' linear relaxations prove at any prices, plus the price of all kit there
/// is, is a bound that no plan can pass. Plans come from local search that keeps every limit, athlete by athlete, first at
/// those prices and then without. Work is counted in rounds and moves, in two lanes whatever the machine has, so that the same
/// request gives the same plan.
/// </summary>
internal sealed class SquadSearch(PlanRequest request, IProgress<string>? progress, CancellationToken cancel)
{
    /// <summary>Moves of the whole squad for each unit of the budget.</summary>
    private const double MovesForEachUnit = 1_200_000;

    private const double RoundsForEachUnit = 1;
    private const int RoundsMost = 60;
    private const int Phases = 24;

    /// <summary>So much of a session's working time is filled before its time line is known; the rest is filled after.</summary>
    private const double ShareBeforeTimelines = 0.93;

    private const double Hot = 4;
    private const double Cold = 0.25;

    private readonly ImmutableArray<AthleteRequest> _athletes =
    [
        .. request.Athletes.OrderBy(a => a.Athlete.Id, StringComparer.Ordinal),
    ];

    private readonly ImmutableArray<SessionSlot> _slots =
    [
        .. request.Slots.OrderBy(s => s.StartUtc).ThenBy(s => s.Id, StringComparer.Ordinal),
    ];

    private readonly ImmutableArray<(string Key, string Session)> _kit =
    [
        .. from slot in request.Slots from key in KitUse.Keys(request) orderby slot.Id, key select (key, slot.Id),
    ];

    private long[] _most = [];
    private AthleteSearch[] _search = [];

    /// <summary>The best plan the budget allows.</summary>
    public Found Best()
    {
        var slotOf = request.Slots.ToDictionary(s => s.Id, StringComparer.Ordinal);
        _most = [.. _kit.Select(k => (long)KitUse.Seconds(request, k.Key, slotOf[k.Session]))];
        double units = request.Budget.DeterministicTime;
        int rounds = Math.Clamp((int)(RoundsForEachUnit * units), 6, RoundsMost);

        PricedRelaxation[] relaxations = new PricedRelaxation[_athletes.Length];
        try
        {
            Parallel.For(
                0,
                _athletes.Length,
                Two(),
                i =>
                    relaxations[i] = new PricedRelaxation(
                        SquadModel.Of(request, Asked.All(), new Scope { Only = [_athletes[i]] })
                    )
            );
            var prices = new long[_kit.Length];
            long bound = long.MaxValue;
            long[] best = prices;
            if (Price(relaxations, ref prices, ref best, ref bound, rounds * 2 / 3, target: null) is { } ended)
            {
                return ended;
            }

            progress?.Report($"no plan can have more than {bound / Scope.PointScale} points");
            if (Begin() is { } other)
            {
                return other with { Bound = other.Objective is null ? null : bound / Scope.PointScale };
            }

            Anneal(best, units);
            long points = _search.Sum(s => s.Points);
            progress?.Report(
                $"best plan {points / Scope.PointScale} of at most {bound / Scope.PointScale}; its time lines"
            );
            prices = best;
            Price(relaxations, ref prices, ref best, ref bound, rounds / 3, target: points);
            bound = Math.Min(bound, ByWeeks(relaxations, best, units) ?? long.MaxValue);
            progress?.Report($"no plan can have more than {bound / Scope.PointScale} points");
            return OnTimelines(bound / Scope.PointScale);
        }
        finally
        {
            foreach (PricedRelaxation? relaxation in relaxations)
            {
                relaxation?.Dispose();
            }
        }
    }

    /// <summary>The bound at the best prices, week by week in whole numbers; null where the budget is too small for it.</summary>
    private long? ByWeeks(PricedRelaxation[] relaxations, long[] prices, double units)
    {
        double each = units / 8 / _athletes.Length;
        if (each < 0.02)
        {
            return null;
        }

        var priced = Enumerable
            .Range(0, prices.Length)
            .Where(k => prices[k] > 0)
            .ToImmutableDictionary(k => (_kit[k].Key, _kit[k].Session), k => prices[k]);
        long[] bounds = new long[relaxations.Length];
        Parallel.For(
            0,
            relaxations.Length,
            Two(),
            i =>
            {
                long byLine = relaxations[i].At(priced).Bound ?? long.MaxValue / 1000;
                long? byWeeks = WeekBounds.Of(request, _athletes[i], relaxations[i], priced, each);
                bounds[i] = Math.Min(byLine, byWeeks ?? long.MaxValue / 1000);
            }
        );
        return bounds.Sum() + Enumerable.Range(0, prices.Length).Sum(k => prices[k] * _most[k]);
    }

    private ParallelOptions Two() => new() { CancellationToken = cancel, MaxDegreeOfParallelism = 2 };

    /// <summary>Rounds of prices: dearer where more is asked for than there is, cheaper where less (after Polyak).</summary>
    private Found? Price(
        PricedRelaxation[] relaxations,
        ref long[] prices,
        ref long[] best,
        ref long bound,
        int rounds,
        long? target
    )
    {
        double pace = 1;
        double[] direction = new double[_kit.Length];
        long[] now = [.. prices];
        int stale = 0;
        for (int round = 0; round < rounds; round++)
        {
            var priced = Enumerable
                .Range(0, now.Length)
                .Where(k => now[k] > 0)
                .ToDictionary(k => (_kit[k].Key, _kit[k].Session), k => now[k]);
            var at = new (long? Bound, Dictionary<(string, string), double> Use)[relaxations.Length];
            Parallel.For(0, relaxations.Length, Two(), i => at[i] = relaxations[i].At(priced));
            for (int i = 0; i < at.Length; i++)
            {
                if (at[i].Bound is not null)
                {
                    continue;
                }

                // The relaxation was not solved: the exact model says whether there is anything at all.
                Solution alone = Solution.Of(
                    SquadModel.Of(request, Asked.All(), new Scope { Only = [_athletes[i]] }),
                    4,
                    request.Budget.WallSeconds,
                    0
                );
                if (alone.Points is null || alone.BoundInThousandths is null)
                {
                    return Found.Nothing(
                        alone.Status == CpSolverStatus.Infeasible ? PlanStatus.Infeasible : PlanStatus.NoneFound
                    );
                }

                at[i] = (alone.BoundInThousandths, []);
            }

            long proven = at.Sum(a => a.Bound!.Value) + Enumerable.Range(0, now.Length).Sum(k => now[k] * _most[k]);
            if (proven < bound)
            {
                bound = proven;
                best = [.. now];
                stale = 0;
            }
            else if (++stale >= 3)
            {
                pace *= 0.6;
                stale = 0;
                now = [.. best];
            }

            double length = 0;
            for (int k = 0; k < now.Length; k++)
            {
                double over = at.Sum(a => a.Use.GetValueOrDefault((_kit[k].Key, _kit[k].Session))) - _most[k];
                direction[k] = now[k] == 0 && over < 0 ? 0 : (0.6 * over) + (0.4 * direction[k]);
                length += direction[k] * direction[k];
            }

            if (length <= 1)
            {
                break;
            }

            double hope = target ?? (bound * 0.97);
            double step = pace * 0.5 * Math.Max(1, proven - hope) / length;
            for (int k = 0; k < now.Length; k++)
            {
                now[k] = (long)Math.Max(0, Math.Round(now[k] + (step * direction[k])));
            }
        }

        prices = now;
        return null;
    }

    /// <summary>A first plan for everybody; null when there is one, else how it ended.</summary>
    private Found? Begin()
    {
        _search = [.. _athletes.Select((who, i) => new AthleteSearch(request, who, _slots, _kit, seed: 1000 + i))];
        long[] none = new long[_kit.Length];
        long[] left = [.. _most];
        for (int i = 0; i < _search.Length; i++)
        {
            string id = _athletes[i].Athlete.Id;
            bool locked = request.Locks.Any(l => l.AthleteId == id);
            bool wished = request.Wishes.Any(w => w.AthleteId == id);
            if (!locked && !wished)
            {
                continue;
            }

            Solution own = Solution.Of(
                SquadModel.Of(
                    request,
                    Asked.All(),
                    new Scope
                    {
                        Only = [_athletes[i]],
                        KitSeconds = Enumerable
                            .Range(0, left.Length)
                            .ToImmutableDictionary(k => (_kit[k].Key, _kit[k].Session), k => left[k]),
                    }
                ),
                Math.Max(0.5, request.Budget.DeterministicTime / 8),
                request.Budget.WallSeconds,
                0.005
            );
            if (own.Points is null)
            {
                return new WholeSearch(request, Asked.All(), cancel).Any(request.Budget.DeterministicTime * 2);
            }

            _search[i].Begin(own.Chosen, c => Stays(c, id));
            for (int k = 0; k < left.Length; k++)
            {
                left[k] -= _search[i].KitUsed[k];
            }
        }

        if (!request.Keeps.IsEmpty)
        {
            var kept = request.Keeps.Where(k => k.Sets > 0).ToLookup(k => k.AthleteId, StringComparer.Ordinal);
            for (int i = 0; i < _search.Length; i++)
            {
                long[] lent = [.. left.Select((l, k) => l + _search[i].KitUsed[k])];
                _search[i].Lend(lent, none);
                _search[i].Seed(kept[_athletes[i].Athlete.Id].ToLookup(k => k.SessionId, k => (k.ExerciseId, k.Sets)));
                for (int k = 0; k < left.Length; k++)
                {
                    left[k] = lent[k] - _search[i].KitUsed[k];
                }
            }
        }

        return null;
    }

    private bool Stays(Chosen item, string id) =>
        request.Locks.Any(l => l.AthleteId == id && l.SessionId == item.Slot.Id && l.ExerciseId == item.Exercise.Id)
        || request.Wishes.Any(w =>
            w.AthleteId == id
            && w.ExerciseId == item.Exercise.Id
            && (w.SessionId is null || w.SessionId == item.Slot.Id)
        );

    private void Anneal(long[] prices, double units)
    {
        int each = (int)Math.Clamp(MovesForEachUnit * units / Phases / Math.Max(1, _athletes.Length), 500, 2_000_000);
        long[] none = new long[_kit.Length];
        bool keeps = !request.Keeps.IsEmpty;
        long bestPoints = long.MinValue;
        int[][] best = [.. _search.Select(s => s.State)];
        foreach (AthleteSearch search in _search)
        {
            search.Fill(ShareBeforeTimelines);
        }

        for (int phase = 0; phase < Phases; phase++)
        {
            cancel.ThrowIfCancellationRequested();
            double from = (double)phase / Phases;
            double until = (double)(phase + 1) / Phases;
            double hot = keeps ? 1 : Hot;
            Lanes(
                phase < Phases * 3 / 4 ? prices : none,
                _most,
                each,
                hot * Math.Pow(Cold / hot, from),
                hot * Math.Pow(Cold / hot, until),
                phase
            );
            long points = _search.Sum(s => s.Points);
            if (points > bestPoints)
            {
                bestPoints = points;
                best = [.. _search.Select(s => s.State)];
            }
        }

        for (int i = 0; i < _search.Length; i++)
        {
            _search[i].Restore(best[i]);
            _search[i].Fill(1);
        }
    }

    /// <summary>Every athlete anneals once, in two lanes side by side; each lane may use half of the kit that is left.</summary>
    private void Lanes(long[] prices, long[] most, int moves, double hot, double cold, int turn)
    {
        long[] left = new long[_kit.Length];
        for (int k = 0; k < left.Length; k++)
        {
            left[k] = most[k] - _search.Sum(s => s.KitUsed[k]);
        }

        int[] order = [.. Enumerable.Range(0, _search.Length).Select(i => (i + turn) % _search.Length)];
        Parallel.For(
            0,
            2,
            Two(),
            lane =>
            {
                long[] share = [.. left.Select(l => lane == 0 ? l - (l / 2) : l / 2)];
                long[] lent = new long[_kit.Length];
                for (int n = lane; n < order.Length; n += 2)
                {
                    AthleteSearch search = _search[order[n]];
                    for (int k = 0; k < lent.Length; k++)
                    {
                        lent[k] = search.KitUsed[k] + share[k];
                    }

                    search.Lend(lent, prices);
                    search.Anneal(moves, hot, cold);
                    for (int k = 0; k < lent.Length; k++)
                    {
                        share[k] = lent[k] - search.KitUsed[k];
                    }
                }
            }
        );
    }

    /// <summary>
    /// A time line for every session. What finds no place in one is done with fewer sets, or left out: the cheapest cut of
    /// its athlete that keeps the limits.
    /// </summary>
    private Found OnTimelines(long bound)
    {
        var timelines = ImmutableDictionary.CreateBuilder<SessionSlot, Timeline>();
        var byId = Enumerable
            .Range(0, _search.Length)
            .ToDictionary(i => _athletes[i].Athlete.Id, i => _search[i], StringComparer.Ordinal);
        bool again = true;
        for (int turn = 0; again && turn < 6; turn++)
        {
            // A cut in one session may take something from a later one, so all are looked at until none changes.
            again = false;
            foreach (SessionSlot slot in _slots)
            {
                cancel.ThrowIfCancellationRequested();
                for (int cut = 0; ; cut++)
                {
                    ImmutableArray<Block> blocks = Blocks.Of(
                        request,
                        slot,
                        _search.SelectMany(s => s.ChosenIn(slot.Id))
                    );
                    if (blocks.IsEmpty)
                    {
                        timelines.Remove(slot);
                        break;
                    }

                    (Timeline timeline, ImmutableArray<Block> left) = GreedyRotation.Partial(
                        blocks,
                        Gym.Of(request, slot)
                    );
                    if (left.IsEmpty)
                    {
                        timelines[slot] = timeline;
                        break;
                    }

                    again = true;
                    bool given = false;
                    foreach (Block block in left.OrderByDescending(b => b.Seconds).Take(1 + (left.Length / 2)))
                    {
                        given |= byId[block.AthleteId].Cut(slot.Id, [.. block.Turns.Select(t => t.ExerciseId)]);
                    }

                    if (!given || cut > 400)
                    {
                        return Locked(bound);
                    }
                }
            }
        }

        if (!again)
        {
            Climb(timelines);
        }

        ImmutableArray<Chosen> chosen = [.. _search.SelectMany(s => s.Chosen)];
        long points = _search.Sum(s => s.Points) / Scope.PointScale;
        return again
            ? Found.Nothing(PlanStatus.NoneFound)
            : new(
                points == bound ? PlanStatus.Optimal : PlanStatus.Feasible,
                points,
                bound,
                chosen,
                timelines.ToImmutable()
            );
    }

    /// <summary>
    /// Looks for better in one athlete's part of one session at a time, and keeps it if the session still has a time line.
    /// </summary>
    private void Climb(ImmutableDictionary<SessionSlot, Timeline>.Builder timelines)
    {
        long[] none = new long[_kit.Length];
        int turns = Math.Clamp((int)request.Budget.DeterministicTime, 4, 60);
        for (int turn = 0; turn < turns; turn++)
        {
            for (int s = 0; s < _slots.Length; s++)
            {
                cancel.ThrowIfCancellationRequested();
                SessionSlot slot = _slots[s];
                Gym gym = Gym.Of(request, slot);
                long[] left = [.. _most.Select((m, k) => m - _search.Sum(a => a.KitUsed[k]))];
                var blocks = _search.Select(a => Blocks.Of(request, slot, a.ChosenIn(slot.Id))).ToArray();
                for (int i = 0; i < _search.Length; i++)
                {
                    AthleteSearch search = _search[i];
                    int[] before = search.State;
                    long points = search.Points;
                    search.Lend([.. left.Select((l, k) => l + search.KitUsed[k])], none);
                    search.Climb(s, 400);
                    if (search.Points <= points)
                    {
                        search.Restore(before);
                        continue;
                    }

                    ImmutableArray<Block> own = Blocks.Of(request, slot, search.ChosenIn(slot.Id));
                    var (timeline, without) = GreedyRotation.Partial(
                        [.. blocks.SelectMany((b, n) => n == i ? own : b)],
                        gym,
                        randomTries: 4
                    );
                    if (without.IsEmpty)
                    {
                        timelines[slot] = timeline;
                        blocks[i] = own;
                    }
                    else
                    {
                        search.Restore(before);
                    }

                    for (int k = 0; k < left.Length; k++)
                    {
                        left[k] = _most[k] - _search.Sum(a => a.KitUsed[k]);
                    }
                }
            }
        }
    }

    /// <summary>Nothing more can be cut (all is locked): the scheduling model has the last word.</summary>
    private Found Locked(long bound)
    {
        ImmutableArray<Chosen> chosen = [.. _search.SelectMany(s => s.Chosen)];
        SquadRotation rotation = SquadRotation.Of(request, chosen, Asked.All());
        if (!rotation.Complete)
        {
            return
                new WholeSearch(request, Asked.All(), cancel).Any(request.Budget.DeterministicTime * 2)
                    is { Objective: not null } any
                ? any with
                {
                    Bound = bound,
                    Status = any.Objective == bound ? PlanStatus.Optimal : PlanStatus.Feasible,
                }
                : Found.Nothing(PlanStatus.NoneFound);
        }

        return new(
            PlanStatus.Feasible,
            _search.Sum(s => s.Points) / Scope.PointScale,
            bound,
            chosen,
            rotation.Timelines
        );
    }
}
