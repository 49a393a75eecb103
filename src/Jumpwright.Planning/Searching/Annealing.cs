using System.Collections.Immutable;
using Jumpwright.Plans;
using Jumpwright.Quantities;

namespace Jumpwright.Planning.Searching;

/// <summary>Simulated annealing of the whole squad, athlete after athlete.</summary>
internal sealed class Annealing(Squad squad, IProgress<Sentence>? progress, CancellationToken cancel)
{
    /// <summary>Moves of the whole squad for each unit of the budget, before there are floors and on them.</summary>
    private const double MovesForEachUnit = 300_000;

    private const double MovesOnFloors = 800_000;

    /// <summary>
    /// Units that the models of one athlete take; what is left of the budget, but at least this share, goes into moves, so that
    /// this lane takes about as long as the one that proves.
    /// </summary>
    private const double UnitsForModels = 1.0 / 6;

    private const double ShareForMoves = 0.6;

    /// <summary>Deterministic time for one exact week, for each unit that an athlete has; and the most.</summary>
    private const double ExactForEachUnit = 0.07;

    private const double ExactMost = 0.3;

    /// <summary>Moves for each session of the sketch that an athlete's exact weeks begin from, so that none ends without a plan.</summary>
    private const int MovesOfASketch = 2500;

    /// <summary>Moves of a visit to one athlete for each session: many short turns let kit change hands more often.</summary>
    private const double MovesForEachSession = 800;

    private const int TurnsLeast = 4;
    private const int TurnsMost = 1000;

    /// <summary>
    /// Every so manieth turn goes without prices, so that what nobody would pay for is taken all the same; the last one too. More
    /// often where prices stay as they are (<see cref="IsPricedAtOnce"/>).
    /// </summary>
    private const int FreeTurnEvery = 4;

    private const int FreeTurnAtFixedPrices = 2;

    /// <summary>So much of a session's working time is filled before its time line is known; the rest is filled after.</summary>
    private const double ShareBeforeFloors = 0.97;

    /// <summary>
    /// Temperatures, points of the objective. Every visit to an athlete goes the whole way down: one athlete's plan against
    /// fixed others is a small problem, and a visit that ends hot is lost.
    /// </summary>
    private const double Hot = 8;

    private const double HotOnFloors = 2.5;
    private const double HotAfterExact = 1;
    private const double HotWithKept = 1;
    private const double Cold = 0.25;

    private readonly bool _keeps = !squad.Request.Keeps.IsEmpty;

    /// <summary>A first plan for everybody at prices for kit; time lines are not asked for.</summary>
    public void WithoutFloors(long[] prices, double units)
    {
        foreach (AthleteSearch search in squad.Searches)
        {
            search.Fill(ShareBeforeFloors);
        }

        InLanes(prices, Each(MovesForEachUnit, units, 1), _keeps ? HotWithKept : Hot);
        foreach (AthleteSearch search in squad.Searches)
        {
            search.Fill(1);
        }
    }

    /// <summary>
    /// One athlete after the other on floors that hold all others; nobody's visit ends worse than it began. The first visit
    /// tries the athlete's exact weeks with what the others leave; where nothing is kept of an earlier plan the floors are
    /// empty before it. In most turns kit has its price, which follows the crowd (<see cref="CrowdedPrices"/>): who gains little by it leaves it
    /// to others, who may come after them in the line. The best plan met stays.
    /// </summary>
    public void OnFloors(double units, long bound, SquadBound known)
    {
        int athletes = squad.Searches.Length;
        double unitsForMoves = Math.Max(ShareForMoves * units, units - (UnitsForModels * athletes));
        int turns = (int)
            Math.Clamp(
                MovesOnFloors * unitsForMoves / athletes / (MovesForEachSession * squad.Slots.Length),
                TurnsLeast,
                TurnsMost
            );
        int each = Each(MovesOnFloors, unitsForMoves, turns);
        long[] none = new long[squad.Kit.Length];
        CrowdedPrices prices = new(squad.Most, known.Prices);
        (ImmutableArray<Chosen> Plan, bool IsWhole)[] exact = _keeps
            ? []
            : ExactWeeks(known, Math.Min(ExactMost, ExactForEachUnit * units / athletes));
        Best best = new(squad);
        for (int turn = 0; turn < turns; turn++)
        {
            // Late turns begin cooler: they mend what is there.
            double hot = _keeps ? HotWithKept : HotOnFloors * Math.Pow(0.4, (double)turn / turns);
            long[] left = squad.Left();
            int free = IsPricedAtOnce ? FreeTurnAtFixedPrices : FreeTurnEvery;
            bool priced = turn % free != free - 1 && turn < turns - 1;
            long[] asked = priced ? prices.Now : none;
            for (int n = 0; n < athletes; n++)
            {
                cancel.ThrowIfCancellationRequested();
                int athlete = (n + (7 * turn)) % athletes;
                AthleteSearch search = squad.Searches[athlete];
                long[] lent = [.. left.Select((l, k) => l + search.KitUsed[k])];
                search.Lend(lent, asked);
                if (turn == 0 && !_keeps)
                {
                    Begin(athlete, exact[athlete], each);
                }
                else
                {
                    search.Anneal(each, hot, Cold);
                }

                for (int k = 0; k < left.Length; k++)
                {
                    left[k] = lent[k] - search.KitUsed[k];
                }
            }

            if (priced && !IsPricedAtOnce)
            {
                prices.After(left);
            }

            best.Look();
            long now = best.Points;
            progress?.Report(
                $"best plan {now} of at most {bound}, gap {100.0 * (bound - now) / Math.Max(1, now):0.0} %"
            );
        }

        best.Return();
    }

    /// <summary>
    /// A few athletes once, on floors that hold all others: their exact weeks if they end with more than what stands, and moves.
    /// </summary>
    /// <param name="known">What their relaxations say of their weeks.</param>
    /// <param name="eachWeek">Deterministic time for an exact week.</param>
    /// <param name="moves">Moves for each.</param>
    public void Few(SquadBound known, double eachWeek, int moves)
    {
        long[] none = new long[squad.Kit.Length];
        for (int athlete = 0; athlete < squad.Searches.Length; athlete++)
        {
            AthleteSearch search = squad.Searches[athlete];
            long[] lent = [.. squad.Left().Select((l, k) => l + search.KitUsed[k])];
            search.Lend(lent, none);
            search.Anneal(moves, HotWithKept, Cold);
            Begin(athlete, ExactWeeks(athlete, lent, known.Prices, known, eachWeek), moves);
        }
    }

    /// <summary>
    /// Everybody's exact weeks, in two lanes side by side: each shares half of the kit out among its athletes, one after the
    /// other (<see cref="Lanes"/>). Which lane an athlete is in depends on their place in the squad alone.
    /// </summary>
    private (ImmutableArray<Chosen> Plan, bool IsWhole)[] ExactWeeks(SquadBound known, double eachWeek)
    {
        long[] left = squad.Left();
        var plans = new (ImmutableArray<Chosen> Plan, bool IsWhole)[squad.Searches.Length];
        int lanes = Lanes();
        Parallel.For(
            0,
            lanes,
            Squad.Two(cancel),
            lane =>
            {
                long[] share = Share(left, lane, lanes);
                long[] whole = [.. share];
                for (int athlete = lane; athlete < plans.Length; athlete += lanes)
                {
                    cancel.ThrowIfCancellationRequested();
                    IReadOnlyList<long> own = squad.Searches[athlete].KitUsed;
                    long[] lent = [.. share.Select((l, k) => l + own[k])];
                    AthleteSearch search = squad.Searches[athlete];
                    long[] prices = IsPricedAtOnce
                        ? known.Prices
                        : CrowdedPrices.InLine(known.Prices, whole, share, (double)athlete / plans.Length);
                    search.Lend(lent, prices);
                    var sketch = search.Sketch(MovesOfASketch * squad.Slots.Length, Hot, Cold);
                    plans[athlete] = ExactWeeks(athlete, lent, prices, known, eachWeek, sketch);
                    var used = KitUse.Of(plans[athlete].Plan);
                    for (int k = 0; k < share.Length; k++)
                    {
                        share[k] = Math.Max(0, lent[k] - Math.Max(own[k], used.GetValueOrDefault(squad.Kit[k])));
                    }
                }
            }
        );
        return plans;
    }

    private (ImmutableArray<Chosen> Plan, bool IsWhole) ExactWeeks(
        int athlete,
        long[] lent,
        long[] prices,
        SquadBound known,
        double eachWeek,
        IReadOnlyDictionary<(string Session, string Exercise), int>? sketch = null
    )
    {
        WeekAfterWeek exact = new(squad, athlete);
        ImmutableArray<Chosen> plan = exact.Plan(
            known.Ahead(athlete),
            WeekBounds.Fine,
            Enumerable.Range(0, lent.Length).ToImmutableDictionary(k => squad.Kit[k], k => lent[k]),
            squad.ByKit(prices),
            eachWeek,
            sketch
        );
        return (plan, exact.IsWhole);
    }

    private void Begin(int athlete, (ImmutableArray<Chosen> Plan, bool IsWhole) exact, int moves) =>
        squad
            .Searches[athlete]
            .Instead(
                exact.Plan.ToLookup(c => c.Slot.Id, c => (c.Exercise.Id, c.Sets)),
                moves,
                exact.IsWhole ? HotAfterExact : Hot,
                Cold
            );

    private int Each(double moves, double units, int turns) =>
        (int)Math.Clamp(moves * units / turns / Math.Max(1, squad.Athletes.Length), 300, 4_000_000);

    /// <summary>With few sessions prices come from one relaxation of the whole squad, and are right at once.</summary>
    private bool IsPricedAtOnce => squad.Entries <= SquadSearch.EntriesInOneRelaxation;

    /// <summary>With few sessions kit is short, and one lane shares all of it: halves leave some of it lying.</summary>
    private int Lanes() => IsPricedAtOnce ? 1 : 2;

    /// <summary>What a lane may use of the kit that is left; the first takes what can't be halved.</summary>
    private static long[] Share(long[] left, int lane, int lanes) =>
        [.. left.Select(l => (l / lanes) + (lane == 0 ? l % lanes : 0))];

    /// <summary>Every athlete anneals once, in lanes side by side, each with its share of the kit that is left.</summary>
    private void InLanes(long[] prices, int moves, double hot)
    {
        ImmutableArray<AthleteSearch> searches = squad.Searches;
        long[] left = squad.Left();
        int lanes = Lanes();
        Parallel.For(
            0,
            lanes,
            Squad.Two(cancel),
            lane =>
            {
                long[] share = Share(left, lane, lanes);
                long[] lent = new long[share.Length];
                for (int n = lane; n < searches.Length; n += lanes)
                {
                    AthleteSearch search = searches[n];
                    for (int k = 0; k < lent.Length; k++)
                    {
                        lent[k] = search.KitUsed[k] + share[k];
                    }

                    search.Lend(lent, prices);
                    search.Anneal(moves, hot, Cold);
                    for (int k = 0; k < lent.Length; k++)
                    {
                        share[k] = lent[k] - search.KitUsed[k];
                    }
                }
            }
        );
    }
}
