using Jumpwright.Plans;
using NodaTime;

namespace Jumpwright.Planning.Searching;

/// <summary>One week of one athlete as a request of its own, without what ties it to other weeks (growth, steps that open).</summary>
internal static class OneWeek
{
    public static (PlanRequest Request, AthleteRequest Who) Of(
        PlanRequest request,
        AthleteRequest who,
        IGrouping<LocalDate, SessionSlot> week
    )
    {
        var ids = week.Select(s => s.Id).ToHashSet(StringComparer.Ordinal);
        AthleteRequest own = who with
        {
            Menu = [.. who.Menu.Where(m => ids.Contains(m.SessionId)).Select(m => m with { After = [] })],
            Pairs = [.. who.Pairs.Where(p => ids.Contains(p.SessionId))],
            Goals = [.. who.Goals.Where(g => g.WeekOf == week.Key)],
            Caps = [.. who.Caps.Where(c => c.SessionIds.Any(ids.Contains))],
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
}
