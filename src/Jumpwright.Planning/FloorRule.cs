using System.Collections.Immutable;
using Jumpwright.Plans;

namespace Jumpwright.Planning;

/// <summary>
/// The rule of roll call: who is away goes, what waited moves up, what lies on a piece of kit that is not here goes to another or is
/// left out, what would not be over in time is not begun, and nothing is left without what must go before it. It needs the plan's own
/// rotation only, so the tablet's script (<c>floor-rule.js</c>) follows it step by step without the program; a test holds the two
/// against each other. The steps stand in docs/floor-rule.md.
/// </summary>
public static class FloorRule
{
    /// <summary>Two times that are nearer than this are one, in minutes.</summary>
    private const double Same = 1e-6;

    /// <summary>The turns that are left, and the items that are not begun with the reason; whoever is away is in neither.</summary>
    /// <param name="session">The session as approved.</param>
    /// <param name="request">The request it was planned from.</param>
    /// <param name="present">Ids of the athletes who are here.</param>
    /// <param name="minutes">Minutes at hand; null or more than planned: as planned.</param>
    /// <param name="kit">Kit at hand by id; what is not named is as planned.</param>
    public static (ImmutableArray<RotationEntry> Turns, ImmutableArray<FloorCut> Cuts) Of(
        PlannedSession session,
        PlanRequest request,
        IEnumerable<string> present,
        int? minutes,
        IReadOnlyDictionary<string, int>? kit = null
    )
    {
        ArgumentNullException.ThrowIfNull(session);
        return Of(
            session.Rotation,
            FloorNeeds.OfAll(session, request),
            FloorNeeds.FreshUntil(session.Slot, request),
            present,
            minutes,
            kit,
            request.Limits.ChangeOverMinutes
        );
    }

    /// <summary>The same from what a tablet has.</summary>
    /// <param name="rotation">The turns as planned.</param>
    /// <param name="needs">What each item needs, in the order of the session.</param>
    /// <param name="freshUntil">Until when fresh work begins, in minutes, by the minutes at hand from none to all that were planned.</param>
    /// <param name="present">Ids of the athletes who are here.</param>
    /// <param name="minutes">Minutes at hand; null or more than planned: as planned.</param>
    /// <param name="kit">Kit at hand by id; what is not named is as planned.</param>
    /// <param name="changeOverMinutes">Minutes between two exercises of somebody who is late for want of kit, at the least; never more than planned.</param>
    public static (ImmutableArray<RotationEntry> Turns, ImmutableArray<FloorCut> Cuts) Of(
        ImmutableArray<RotationEntry> rotation,
        ImmutableArray<(string AthleteId, FloorNeeds Needs)> needs,
        ImmutableArray<double> freshUntil,
        IEnumerable<string> present,
        int? minutes,
        IReadOnlyDictionary<string, int>? kit = null,
        double changeOverMinutes = double.PositiveInfinity
    )
    {
        HashSet<string> here = new(present, StringComparer.Ordinal);
        FloorKit today = new(kit);
        int planned = freshUntil.Length - 1;
        bool isShort = rotation.Any(today.Misses);
        double until =
            minutes is { } m && m < planned ? m
            : isShort ? planned
            : double.PositiveInfinity;
        double fresh = freshUntil[Math.Clamp(minutes ?? planned, 0, planned)];
        List<(string Id, ImmutableArray<FloorNeeds> Needs, ImmutableArray<FloorCut> Missing)> athletes =
        [
            .. needs
                .Where(n => here.Contains(n.AthleteId))
                .GroupBy(n => n.AthleteId, n => n.Needs, StringComparer.Ordinal)
                .Select(one => (one.Key, one.ToImmutableArray(), CutsOf(one.Key, [.. one], today.Missing))),
        ];
        HashSet<(string, string)> gone =
        [
            .. athletes.SelectMany(a => a.Missing).Select(c => (c.AthleteId, c.ExerciseId)),
        ];
        ImmutableArray<(string, FloorNeeds)> left =
        [
            .. needs.Where(n => !gone.Contains((n.AthleteId, n.Needs.ExerciseId))),
        ];
        FloorTurns placed = new(rotation, left, here, gone, today, isShort ? until : null, fresh, changeOverMinutes);
        ILookup<(string, string), FloorTurn> turnsOf = placed
            .Left.SelectMany(t => t.Here.Select(a => (Of: (a, t.Entry.ExerciseId), Turn: t)))
            .ToLookup(t => t.Of, t => t.Turn);
        FloorCutReason? Late(string athlete, FloorNeeds item)
        {
            IEnumerable<FloorTurn> turns = turnsOf[(athlete, item.ExerciseId)];
            return placed.NotBegun.TryGetValue((athlete, item.ExerciseId), out FloorCutReason reason) ? reason
                : turns.Any(t => t.End > until + Same) ? FloorCutReason.NotOverInTime
                : item.IsFresh && turns.Any() && turns.Min(t => t.Start) > fresh + Same ? FloorCutReason.NotFreshByThen
                : null;
        }

        ImmutableArray<FloorCut> cuts =
        [
            .. athletes.SelectMany(a =>
                a.Missing.Concat(
                    CutsOf(
                        a.Id,
                        [.. a.Needs.Where(n => !gone.Contains((a.Id, n.ExerciseId)))],
                        item => Late(a.Id, item)
                    )
                )
            ),
        ];
        gone.UnionWith(cuts.Select(c => (c.AthleteId, c.ExerciseId)));
        return (
            [
                .. placed
                    .Left.Select(t =>
                        t.Entry with
                        {
                            Station = t.Station,
                            StartMin = t.Start,
                            EndMin = t.End,
                            EasyUntilMin = t.Entry.EasyUntilMin - (t.Entry.StartMin - t.Start),
                            AthleteIds = [.. t.Here.Where(a => !gone.Contains((a, t.Entry.ExerciseId)))],
                        }
                    )
                    .Where(e => e.AthleteIds.Length > 0)
                    .OrderBy(e => e.StartMin)
                    .ThenBy(e => e.Station, StringComparer.Ordinal)
                    .ThenBy(e => e.ExerciseId, StringComparer.Ordinal)
                    .ThenBy(e => e.AthleteIds[0], StringComparer.Ordinal),
            ],
            cuts
        );
    }

    /// <summary>What falls for a reason of its own, and then what needs it.</summary>
    private static ImmutableArray<FloorCut> CutsOf(
        string athlete,
        ImmutableArray<FloorNeeds> needs,
        Func<FloorNeeds, FloorCutReason?> fallen
    )
    {
        List<FloorNeeds> left = [];
        var cuts = ImmutableArray.CreateBuilder<FloorCut>();
        foreach (FloorNeeds item in needs)
        {
            if (fallen(item) is { } reason)
            {
                cuts.Add(new FloorCut(athlete, item.ExerciseId, reason));
            }
            else
            {
                left.Add(item);
            }
        }

        bool low = left.Exists(n => n.IsLow);
        bool LacksPartner(FloorNeeds item) =>
            item.OnlyWith is { } with
            && needs.Any(o => o.ExerciseId == with)
            && !left.Exists(o => o.ExerciseId == with);
        while (left.Find(n => (n.NeedsLow && !low) || LacksPartner(n)) is { } lost)
        {
            left.Remove(lost);
            cuts.Add(
                new FloorCut(
                    athlete,
                    lost.ExerciseId,
                    lost.NeedsLow && !low ? FloorCutReason.NoLowWorkBefore : FloorCutReason.OnlyWithItsPartner
                )
            );
        }

        return cuts.ToImmutable();
    }
}
