using System.Collections.Immutable;
using Jumpwright.Plans;
using Jumpwright.Quantities;
using NodaTime;

namespace Jumpwright.Planning.Searching;

/// <summary>
/// One week of one athlete as a request of its own, without what ties it to other weeks: the weeks before are taken to
/// hold all they can, so that a tissue grows from their caps, and a step needs only what they can't hold.
/// </summary>
internal static class OneWeek
{
    public static (PlanRequest Request, AthleteRequest Who) Of(
        PlanRequest request,
        AthleteRequest who,
        IGrouping<LocalDate, SessionSlot> week
    )
    {
        var ids = week.Select(s => s.Id).ToHashSet(StringComparer.Ordinal);
        LocalDate first = week.Min(s => s.Date);
        var before = request.Slots.Where(s => s.Date < first).Select(s => s.Id).ToHashSet(StringComparer.Ordinal);
        AthleteRequest own = who with
        {
            Menu =
            [
                .. who
                    .Menu.Where(m => ids.Contains(m.SessionId))
                    .Select(m => m with { After = [.. Still(m, who, before)] }),
            ],
            Pairs = [.. who.Pairs.Where(p => ids.Contains(p.SessionId))],
            Goals = [.. who.Goals.Where(g => g.WeekOf == week.Key)],
            Caps = [.. who.Caps.Where(c => c.SessionIds.Any(ids.Contains)), .. Grown(who, ids)],
            Growths = [],
        };
        return (
            request with
            {
                Slots = [.. week],
                Athletes = [own],
                Locks = [.. request.Locks.Where(l => ids.Contains(l.SessionId))],
                Wishes = [.. request.Wishes.Where(w => w.SessionId is { } s && ids.Contains(s))],
                Keeps = [.. request.Keeps.Where(k => ids.Contains(k.SessionId))],
            },
            own
        );
    }

    /// <summary>What opens a step, less the sessions of earlier weeks that could hold it.</summary>
    private static IEnumerable<Opening> Still(MenuItem menu, AthleteRequest who, HashSet<string> before) =>
        from opening in menu.After
        let left = opening.Sessions
            - who.Menu.Count(m => m.ExerciseId == opening.ExerciseId && before.Contains(m.SessionId))
        where left > 0
        select opening with
        {
            Sessions = left,
        };

    /// <summary>Growth as caps: no week before held more than its own caps and growth let it.</summary>
    private static IEnumerable<LoadCap> Grown(AthleteRequest who, HashSet<string> ids) =>
        from growth in who.Growths
        where growth.Later.Any(ids.Contains)
        let most = MostIn(who, growth.Later, growth.Tissue)
        where most < int.MaxValue
        select new LoadCap(
            "weekly-growth-in-plan",
            growth.Later,
            growth.Tissue,
            (int)most,
            $"From what the weeks before may hold."
        );

    /// <summary>No more demand on a tissue than that is possible in these sessions; the greatest number when nothing says.</summary>
    private static long MostIn(AthleteRequest who, ImmutableArray<string> sessions, Tissue tissue)
    {
        if (sessions.IsEmpty)
        {
            return 0;
        }

        long most = int.MaxValue;
        foreach (LoadCap cap in who.Caps.Where(c => c.Tissue == tissue && sessions.All(c.SessionIds.Contains)))
        {
            most = Math.Min(most, cap.AtMost);
        }

        foreach (LoadGrowth growth in who.Growths.Where(g => g.Tissue == tissue && sessions.All(g.Later.Contains)))
        {
            long before = MostIn(who, growth.Earlier, tissue);
            most =
                before == int.MaxValue ? most : Math.Min(most, growth.Step + ((100 + growth.Percent) * before / 100));
        }

        return most;
    }
}
