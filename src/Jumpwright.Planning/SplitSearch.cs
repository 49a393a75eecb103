using System.Collections.Immutable;
using Google.OrTools.Sat;
using Jumpwright.Planning.Rotations;
using Jumpwright.Plans;

namespace Jumpwright.Planning;

/// <summary>
/// A larger squad athlete by athlete. Athletes share nothing but kit; a price for each second of each kit in each session
/// takes that tie away (Lagrangian relaxation), and what the athletes' best answers add up to at any prices, plus the
/// price of all kit there is, is a bound that no plan can pass. Plans come from the same answers: whoever uses kit that is
/// short plans again with what the others leave.
/// </summary>
internal sealed class SplitSearch(PlanRequest request, IProgress<string>? progress, CancellationToken cancel)
{
    private const int RoundsOfPrices = 5;
    private const int RoundsToAPlan = 2;
    private const int RoundsOfTightening = 30;

    private readonly ImmutableArray<AthleteRequest> _athletes =
    [
        .. request.Athletes.OrderBy(a => a.Athlete.Id, StringComparer.Ordinal),
    ];

    private readonly ImmutableDictionary<(string Kit, string Session), long> _kit = (
        from slot in request.Slots
        from kit in KitUse.Keys(request)
        select (Key: (kit, slot.Id), Seconds: (long)KitUse.Seconds(request, kit, slot))
    ).ToImmutableDictionary(k => k.Key, k => k.Seconds);

    /// <summary>One answer for each athlete, in the order of their ids.</summary>
    private sealed record Answers(ImmutableArray<Solution> OfAthletes)
    {
        public long Points => OfAthletes.Sum(s => s.Points ?? 0);
        public ImmutableArray<Chosen> Chosen => [.. OfAthletes.SelectMany(s => s.Chosen)];
    }

    /// <summary>The best plan the budget allows.</summary>
    public Found Best()
    {
        long bound = long.MaxValue;
        Answers? best = null;
        var prices = LinearRelaxation.Prices(SquadModel.Of(request, Asked.All(), new Scope()));
        double pace = 0.7;
        for (int round = 0; round < RoundsOfPrices; round++)
        {
            ImmutableArray<Solution> asked = AskAll(prices);
            if (asked.Any(s => s.Status == CpSolverStatus.Infeasible))
            {
                return Found.Nothing(PlanStatus.Infeasible);
            }

            if (asked.Any(s => s.Points is null || s.BoundInThousandths is null))
            {
                return Found.Nothing(PlanStatus.NoneFound);
            }

            long priced = asked.Sum(s => s.BoundInThousandths!.Value) + prices.Sum(p => p.Value * _kit[p.Key]);
            bound = Math.Min(bound, (long)Math.Floor((double)priced / Scope.PointScale));
            bool last = round == RoundsOfPrices - 1;
            Answers? plan =
                round % RoundsToAPlan == 0 || last ? Mend(new(asked), _kit, prices, round, twice: last) : null;
            if (plan is not null && (best is null || plan.Points > best.Points))
            {
                best = plan;
            }

            progress?.Report($"round {round + 1}: best plan {best?.Points} of at most {bound}");
            if (best is not null && bound - best.Points <= best.Points * request.Budget.GapLimit)
            {
                break;
            }

            prices = NewPrices(prices, asked, priced, best?.Points ?? 0, pace);
            pace *= 0.8;
        }

        if (best is null)
        {
            Found any = new WholeSearch(request, Asked.All(), cancel).Any(request.Budget.DeterministicTime);
            return any.Objective is null
                ? Found.Nothing(any.Status)
                : any with
                {
                    Bound = bound,
                    Status = any.Objective == bound ? PlanStatus.Optimal : PlanStatus.Feasible,
                };
        }

        return OnTimelines(best, bound, prices);
    }

    /// <summary>Tightens the kit of sessions that found no time line until all have one.</summary>
    private Found OnTimelines(Answers plan, long bound, ImmutableDictionary<(string, string), long> prices)
    {
        var kit = _kit;
        for (int round = 0; round < RoundsOfTightening; round++)
        {
            SquadRotation rotation = SquadRotation.Of(request, plan.Chosen, Asked.All());
            if (rotation.Complete)
            {
                PlanStatus status = plan.Points == bound ? PlanStatus.Optimal : PlanStatus.Feasible;
                return new(status, plan.Points, bound, plan.Chosen, rotation.Timelines);
            }

            progress?.Report(
                $"time lines: {rotation.Unknown.Length + rotation.Impossible.Length} sessions don't fit yet"
            );
            foreach (SessionSlot slot in rotation.Unknown.Concat(rotation.Impossible.Select(i => i.Slot)))
            {
                kit = Tightening.Of(kit, slot, request, plan.Chosen);
            }

            if (Mend(plan, kit, prices, round, twice: true) is not { } mended)
            {
                break;
            }

            plan = mended;
        }

        return Found.Nothing(PlanStatus.NoneFound);
    }

    /// <summary>
    /// A plan that keeps to the kit: whoever uses kit that is short plans again, one after the other, with what is left;
    /// then, if asked, each of them once more with what all others leave. Null when somebody can't.
    /// </summary>
    private Answers? Mend(
        Answers start,
        ImmutableDictionary<(string Kit, string Session), long> kit,
        ImmutableDictionary<(string, string), long> prices,
        int turn,
        bool twice
    )
    {
        var now = start.OfAthletes.ToArray();
        var used = now.Select(UseOf).ToArray();
        HashSet<(string, string)> shortOf =
        [
            .. kit.Where(k => used.Sum(u => u.GetValueOrDefault(k.Key)) > k.Value).Select(k => k.Key),
        ];
        int[] again =
        [
            .. Enumerable
                .Range(0, now.Length)
                .Select(i => (i + turn) % now.Length)
                .Where(i => used[i].Any(u => u.Value > 0 && shortOf.Contains(u.Key)))
                .OrderBy(i => Bound(i) ? 0 : 1),
        ];
        foreach (int i in again)
        {
            used[i] = [];
        }

        var rates = twice && !prices.IsEmpty ? new[] { prices, [] } : [prices];
        foreach (var pricesNow in rates)
        {
            foreach (int i in again)
            {
                cancel.ThrowIfCancellationRequested();
                used[i] = [];
                var left = kit.ToImmutableDictionary(
                    k => k.Key,
                    k => Math.Max(0, k.Value - used.Sum(u => u.GetValueOrDefault(k.Key)))
                );
                Solution solution = Ask(_athletes[i], left, pricesNow);
                bool second = pricesNow != prices;
                if (solution.Points is null)
                {
                    return null;
                }

                now[i] = second && now[i].Points > solution.Points && Fits(UseOf(now[i]), left) ? now[i] : solution;
                used[i] = UseOf(now[i]);
            }
        }

        return new([.. now]);
    }

    private static bool Fits(
        Dictionary<(string, string), long> use,
        ImmutableDictionary<(string Kit, string Session), long> left
    ) => use.All(u => u.Value <= left.GetValueOrDefault(u.Key));

    /// <summary>True for an athlete with something locked or asked for by name: they plan first.</summary>
    private bool Bound(int athlete) =>
        request.Locks.Any(l => l.AthleteId == _athletes[athlete].Athlete.Id)
        || request.Wishes.Any(w => w.AthleteId == _athletes[athlete].Athlete.Id);

    private ImmutableArray<Solution> AskAll(ImmutableDictionary<(string, string), long> prices)
    {
        var answers = new Solution[_athletes.Length];
        // Each answer depends on nothing but its athlete and the prices, so running them side by side changes none.
        Parallel.For(0, _athletes.Length, i => answers[i] = Ask(_athletes[i], _kit, prices));
        cancel.ThrowIfCancellationRequested();
        return [.. answers];
    }

    private Solution Ask(
        AthleteRequest who,
        ImmutableDictionary<(string, string), long> kit,
        ImmutableDictionary<(string, string), long> prices
    )
    {
        SquadModel squad = SquadModel.Of(
            request,
            Asked.All(),
            new Scope
            {
                Only = [who],
                KitSeconds = kit,
                Prices = prices,
            }
        );
        return Solution.Of(
            squad,
            request.Budget.DeterministicTime / 4,
            request.Budget.WallSeconds,
            gap: 0,
            presolve: false
        );
    }

    /// <summary>Dearer where more is asked for than there is, cheaper where less (a subgradient step after Polyak).</summary>
    private ImmutableDictionary<(string, string), long> NewPrices(
        ImmutableDictionary<(string, string), long> prices,
        ImmutableArray<Solution> asked,
        long priced,
        long points,
        double pace
    )
    {
        var used = asked.Select(UseOf).ToArray();
        var over = _kit.OrderBy(k => k.Key)
            .Select(k => (k.Key, Over: used.Sum(u => u.GetValueOrDefault(k.Key)) - k.Value))
            .Where(k => k.Over > 0 || prices.GetValueOrDefault(k.Key) > 0)
            .ToList();
        double length = over.Sum(k => (double)k.Over * k.Over);
        if (length <= 0)
        {
            return prices;
        }

        double step = pace * Math.Max(1, priced - (points * Scope.PointScale)) / length;
        return over.Select(k =>
                (k.Key, Price: (long)Math.Round(Math.Max(0, prices.GetValueOrDefault(k.Key) + (step * k.Over))))
            )
            .Where(k => k.Price > 0)
            .ToImmutableDictionary(k => k.Key, k => k.Price);
    }

    private static Dictionary<(string Kit, string Session), long> UseOf(Solution solution)
    {
        Dictionary<(string, string), long> use = [];
        foreach (Chosen chosen in solution.Chosen)
        {
            long seconds = chosen.Menu.SecondsOf(chosen.Sets) + chosen.Who.PairSeconds(chosen.Menu, chosen.Sets);
            foreach ((string key, int count) in KitUse.Of(chosen.Exercise, chosen.Phase))
            {
                use[(key, chosen.Slot.Id)] = use.GetValueOrDefault((key, chosen.Slot.Id)) + (count * seconds);
            }
        }

        return use;
    }
}
