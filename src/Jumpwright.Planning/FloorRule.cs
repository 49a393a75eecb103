using System.Collections.Immutable;
using Jumpwright.Plans;

namespace Jumpwright.Planning;

/// <summary>
/// The rule of roll call while the kit is as planned: who is away goes, what waited moves up, what would not be over in time is
/// not begun, and nothing is left without what must go before it. It needs the plan's own rotation only, so the tablet's script
/// (<c>floor-rule.js</c>) follows it step by step without the program; a test holds the two against each other. The steps stand in docs/floor-rule.md.
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
    public static (ImmutableArray<RotationEntry> Turns, ImmutableArray<FloorCut> Cuts) Of(
        PlannedSession session,
        PlanRequest request,
        IEnumerable<string> present,
        int? minutes
    )
    {
        ArgumentNullException.ThrowIfNull(session);
        return Of(
            session.Rotation,
            FloorNeeds.OfAll(session, request),
            FloorNeeds.FreshUntil(session.Slot, request),
            present,
            minutes
        );
    }

    /// <summary>The same from what a tablet has.</summary>
    /// <param name="rotation">The turns as planned.</param>
    /// <param name="needs">What each item needs, in the order of the session.</param>
    /// <param name="freshUntil">Until when fresh work begins, in minutes, by the minutes at hand from none to all that were planned.</param>
    /// <param name="present">Ids of the athletes who are here.</param>
    /// <param name="minutes">Minutes at hand; null or more than planned: as planned.</param>
    public static (ImmutableArray<RotationEntry> Turns, ImmutableArray<FloorCut> Cuts) Of(
        ImmutableArray<RotationEntry> rotation,
        ImmutableArray<(string AthleteId, FloorNeeds Needs)> needs,
        ImmutableArray<double> freshUntil,
        IEnumerable<string> present,
        int? minutes
    )
    {
        HashSet<string> here = new(present, StringComparer.Ordinal);
        List<Turn> turns = Moved(rotation, here);
        int planned = freshUntil.Length - 1;
        double until = minutes is { } m && m < planned ? m : double.PositiveInfinity;
        double fresh = freshUntil[Math.Clamp(minutes ?? planned, 0, planned)];
        ILookup<(string, string), Turn> turnsOf = turns
            .SelectMany(t => t.Here.Select(a => (Of: (a, t.Entry.ExerciseId), Turn: t)))
            .ToLookup(t => t.Of, t => t.Turn);
        ImmutableArray<FloorCut> cuts =
        [
            .. needs
                .Where(n => here.Contains(n.AthleteId))
                .GroupBy(n => n.AthleteId, n => n.Needs, StringComparer.Ordinal)
                .SelectMany(one => CutsOf(one.Key, [.. one], turnsOf, until, fresh)),
        ];
        HashSet<(string, string)> gone = [.. cuts.Select(c => (c.AthleteId, c.ExerciseId))];
        return (
            [
                .. turns
                    .Select(t =>
                        t.Entry with
                        {
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

    private static IEnumerable<FloorCut> CutsOf(
        string athlete,
        FloorNeeds[] needs,
        ILookup<(string, string), Turn> turnsOf,
        double until,
        double fresh
    )
    {
        FloorCutReason? Late(FloorNeeds item)
        {
            IEnumerable<Turn> turns = turnsOf[(athlete, item.ExerciseId)];
            return turns.Any(t => t.End > until + Same) ? FloorCutReason.NotOverInTime
                : item.IsFresh && turns.Any() && turns.Min(t => t.Start) > fresh + Same ? FloorCutReason.NotFreshByThen
                : null;
        }

        List<FloorNeeds> left = [];
        List<FloorCut> cuts = [];
        foreach (FloorNeeds item in needs)
        {
            if (Late(item) is { } late)
            {
                cuts.Add(new FloorCut(athlete, item.ExerciseId, late));
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

        return cuts;
    }

    private static List<Turn> Moved(ImmutableArray<RotationEntry> rotation, HashSet<string> here)
    {
        List<Turn> made = [];
        var before = new Dictionary<string, List<Turn>>(StringComparer.Ordinal);
        foreach (
            RotationEntry entry in rotation
                .OrderBy(r => r.StartMin)
                .ThenBy(r => r.Station, StringComparer.Ordinal)
                .ThenBy(r => r.ExerciseId, StringComparer.Ordinal)
                .ThenBy(r => r.AthleteIds[0], StringComparer.Ordinal)
        )
        {
            ImmutableArray<string> who = [.. entry.AthleteIds.Where(here.Contains)];
            string[] pieces = entry.Station.Split('+');
            string[] shared = [.. pieces.Select(p => "piece " + p), .. who.Select(w => "athlete " + w)];
            double? sooner = shared
                .SelectMany(k => before.TryGetValue(k, out List<Turn>? there) ? there : [])
                .Where(p => p.Entry.EndMin <= entry.StartMin + Same)
                .Select(p => (double?)(p.Entry.EndMin - p.End))
                .Min();
            double start = entry.StartMin - Math.Max(0, sooner ?? 0);
            var turn = new Turn(entry, who, start, who.IsEmpty ? start : entry.EndMin - Math.Max(0, sooner ?? 0));
            made.Add(turn);
            foreach (string key in shared)
            {
                if (!before.TryGetValue(key, out List<Turn>? there))
                {
                    before[key] = there = [];
                }

                there.Add(turn);
            }
        }

        made.RemoveAll(t => t.Here.IsEmpty);
        return made;
    }

    private sealed record Turn(RotationEntry Entry, ImmutableArray<string> Here, double Start, double End);
}
