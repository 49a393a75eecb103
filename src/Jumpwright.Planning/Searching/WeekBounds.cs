using System.Collections.Immutable;
using Jumpwright.Plans;

namespace Jumpwright.Planning.Searching;

/// <summary>
/// A tighter bound for one athlete than the linear relaxation gives: what ties the weeks together is priced, and every week is
/// then solved by itself in whole numbers. The prices are the relaxation's duals; any would do.
/// </summary>
internal static class WeekBounds
{
    private const long Fine = 100;

    /// <summary>Proven: nothing this athlete does is worth more at these prices, in thousandths; null when not proven.</summary>
    public static long? Of(
        PlanRequest request,
        AthleteRequest who,
        PricedRelaxation relaxation,
        ImmutableDictionary<(string Kit, string Session), long> prices,
        double deterministicTime
    )
    {
        if (relaxation.At(prices).Bound is null)
        {
            return null;
        }

        var (extra, sum) = relaxation.Untied(Fine);
        foreach (var week in request.Slots.GroupBy(s => PlanRequest.WeekOf(s.Date)))
        {
            ImmutableArray<SessionSlot> slots = [.. week];
            var ids = slots.Select(s => s.Id).ToHashSet(StringComparer.Ordinal);
            AthleteRequest own = who with
            {
                Menu = [.. who.Menu.Where(m => ids.Contains(m.SessionId)).Select(m => m with { After = [] })],
                Pairs = [.. who.Pairs.Where(p => ids.Contains(p.SessionId))],
                Goals = [.. who.Goals.Where(g => g.WeekOf == week.Key)],
                Caps = [.. who.Caps.Where(c => c.SessionIds.Any(ids.Contains))],
                Growths = [],
            };
            if (own.Menu.IsEmpty)
            {
                continue;
            }

            PlanRequest one = request with
            {
                Slots = slots,
                Athletes = [own],
                Locks = [.. request.Locks.Where(l => ids.Contains(l.SessionId))],
                Wishes = [.. request.Wishes.Where(w => w.SessionId is { } s && ids.Contains(s))],
                Keeps = [.. request.Keeps.Where(k => ids.Contains(k.SessionId))],
            };
            SquadModel model = SquadModel.Of(
                one,
                Asked.All(),
                new Scope
                {
                    Only = [own],
                    Prices = prices.Where(p => ids.Contains(p.Key.Session)).ToImmutableDictionary(),
                    Fine = Fine,
                    Extra = extra.Where(e => ids.Contains(e.Key.Item1)).ToImmutableDictionary(),
                }
            );
            Solution solution = Solution.Of(
                model,
                deterministicTime,
                request.Budget.WallSeconds,
                gap: 0.0005,
                presolve: false
            );
            if (solution.BoundInThousandths is not { } bound)
            {
                return null;
            }

            sum += bound;
        }

        return (long)Math.Floor((double)sum / Fine) + 1;
    }
}
