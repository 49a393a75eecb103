using NodaTime;

namespace Jumpwright.Plans;

/// <summary>
/// What several athletes cost by what they do side by side: points off for every different exercise of a session (few groups), and for
/// uneven use of staff and kit over the sessions of a week. One athlete alone has no groups. All in thousandths of a point;
/// never below 0, so that a bound that leaves them out stays true. Weights are preferences (common practice).
/// </summary>
public static class Evenness
{
    private const double Thousandths = 1000;

    /// <summary>Points off for every different exercise of a session.</summary>
    public static long EachGroup(PlanRequest request) => Weight(request, request.Limits.PointsEachGroup);

    /// <summary>Points off for every exercise that a week's fullest session has more than its emptiest.</summary>
    public static long UnevenStaff(PlanRequest request) => Weight(request, request.Limits.PointsUnevenStaff);

    /// <summary>Points off for every minute, begun ones counted whole, by which a kit is used more in one session of a week than in another.</summary>
    public static long UnevenKit(PlanRequest request) => Weight(request, request.Limits.PointsUnevenKit);

    /// <summary>What these items cost together.</summary>
    public static long Of(
        IReadOnlyCollection<(string AthleteId, string SessionId, string ExerciseId, int Sets)> items,
        PlanRequest request
    )
    {
        (long group, long staff, long kit) = (EachGroup(request), UnevenStaff(request), UnevenKit(request));
        if (group == 0 && staff == 0 && kit == 0)
        {
            return 0;
        }

        var groups = items
            .GroupBy(i => i.SessionId, StringComparer.Ordinal)
            .ToDictionary(
                g => g.Key,
                g => g.Select(i => i.ExerciseId).Distinct(StringComparer.Ordinal).Count(),
                StringComparer.Ordinal
            );
        var use = kit == 0 ? [] : KitSeconds(items, request);
        string[] kits = [.. request.Kit.Select(k => k.Id).Distinct(StringComparer.Ordinal)];
        long off = group * groups.Values.Sum();
        foreach (IGrouping<LocalDate, SessionSlot> week in request.Slots.GroupBy(s => PlanRequest.WeekOf(s.Date)))
        {
            off += staff * Spread(week.Select(s => (long)groups.GetValueOrDefault(s.Id)));
            off += kit * kits.Sum(k => Minutes(Spread(week.Select(s => use.GetValueOrDefault((k, s.Id))))));
        }

        return off;
    }

    /// <summary>Minutes, begun ones counted whole.</summary>
    public static long Minutes(long seconds) => (seconds + 59) / 60;

    private static long Spread(IEnumerable<long> values)
    {
        long[] all = [.. values];
        return all.Max() - all.Min();
    }

    private static Dictionary<(string Kit, string Session), long> KitSeconds(
        IEnumerable<(string AthleteId, string SessionId, string ExerciseId, int Sets)> items,
        PlanRequest request
    )
    {
        var athletes = request.Athletes.ToDictionary(a => a.Athlete.Id, StringComparer.Ordinal);
        Dictionary<(string, string), long> use = [];
        foreach (var item in items)
        {
            if (
                athletes.GetValueOrDefault(item.AthleteId) is not { } who
                || who.OnMenu(item.SessionId, item.ExerciseId) is not { } menu
            )
            {
                continue;
            }

            long seconds = menu.SecondsOf(item.Sets) + who.PairSeconds(menu, item.Sets);
            foreach (var need in request.Catalogue.Find(item.ExerciseId)?.Kit ?? [])
            {
                use[(need.Id, item.SessionId)] =
                    use.GetValueOrDefault((need.Id, item.SessionId)) + (need.Count * seconds);
            }
        }

        return use;
    }

    private static long Weight(PlanRequest request, double points) =>
        request.Athletes.Length > 1 ? (long)Math.Round(points * Thousandths) : 0;
}
