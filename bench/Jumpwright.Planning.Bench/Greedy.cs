using Jumpwright.Planning.Searching;
using Jumpwright.Plans;

namespace Jumpwright.Planning.Bench;

/// <summary>
/// A greedy planner to compare with: athlete after athlete takes only what gains, with the kit that those before left. Time
/// lines are not asked for, so it is flattered.
/// </summary>
internal static class Greedy
{
    public static long Points(PlanRequest request)
    {
        SessionSlot[] slots = [.. request.Slots.OrderBy(s => s.StartUtc)];
        (string Key, string Session)[] kit =
        [
            .. from slot in slots from key in KitUse.Keys(request) select (key, slot.Id),
        ];
        long[] left = [.. kit.Select(k => (long)KitUse.Seconds(request, k.Key, slots.First(s => s.Id == k.Session)))];
        long[] none = new long[kit.Length];
        long points = 0;
        foreach (AthleteRequest who in request.Athletes)
        {
            AthleteSearch search = new(request, who, [.. slots], [.. kit], seed: 1);
            search.Lend(left, none);
            search.Anneal(400 * slots.Length, 1e-6, 1e-6);
            for (int k = 0; k < left.Length; k++)
            {
                left[k] -= search.KitUsed[k];
            }

            points += search.Points / Scope.PointScale;
        }

        return points;
    }
}
