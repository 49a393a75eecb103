using Jumpwright.Exercises;
using Jumpwright.Plans;
using static Jumpwright.Tests.Planning.IndependentChecker;

namespace Jumpwright.Tests.Planning;

/// <summary>
/// The best plan of a tiny squad by trying all: every choice of sets for every menu entry, and every order of work on
/// the floor. Knows nothing of the planner.
/// </summary>
internal static class BruteForce
{
    /// <summary>Points of the best plan that keeps all limits; null when there is none.</summary>
    public static double? Best(PlanRequest request)
    {
        List<List<(List<Done> Done, double Value)>> each = [];
        foreach (AthleteRequest who in request.Athletes)
        {
            List<(List<Done>, double)> own = [];
            foreach (List<Done> done in Choices(who, request))
            {
                bool locked = request
                    .Locks.Where(l => l.AthleteId == who.Athlete.Id)
                    .All(l => done.Contains(new(l.AthleteId, l.SessionId, l.ExerciseId, l.Sets)));
                if (locked && OfAthlete(done, who, request).Count == 0)
                {
                    own.Add((done, Gains(done, request)));
                }
            }

            each.Add([.. own.OrderByDescending(o => o.Item2)]);
        }

        if (each.Exists(e => e.Count == 0))
        {
            return null;
        }

        IEnumerable<(List<Done> Done, double Value)> whole =
            each.Count == 1
                ? each[0]
                : each[0]
                    .SelectMany(a => each[1].Select(b => (a, b)))
                    .OrderByDescending(p => p.a.Value + p.b.Value)
                    .Select(p => ((List<Done>)[.. p.a.Done, .. p.b.Done], p.a.Value + p.b.Value));
        Dictionary<string, bool> known = [];
        double? best = null;
        foreach ((List<Done> done, double gains) in whole)
        {
            // Groups and unevenness only cost: from here on nothing can be better.
            if (best >= gains)
            {
                break;
            }

            double value = Value(done, request);
            if (
                !(best >= value)
                && Kit(done, request).Count == 0
                && request.Slots.All(s => FitsOnTheFloor(s, done, request, known))
            )
            {
                best = value;
            }
        }

        return best;
    }

    private static IEnumerable<List<Done>> Choices(AthleteRequest who, PlanRequest request)
    {
        List<List<Done>> all =
        [
            [],
        ];
        foreach (MenuItem entry in who.Menu)
        {
            List<List<Done>> more = [];
            for (int sets = entry.Dose.SetsMin; sets <= entry.Dose.SetsMax; sets++)
            {
                Done done = new(who.Athlete.Id, entry.SessionId, entry.Dose.ExerciseId, sets);
                if (Items([done], request).Count == 0)
                {
                    more.AddRange(all.Select(a => (List<Done>)[.. a, done]));
                }
            }

            all.AddRange(more);
        }

        return all;
    }

    private sealed record Work(string Athlete, int Phase, int Seconds, List<KitNeed> Kit);

    private static bool FitsOnTheFloor(
        SessionSlot slot,
        List<Done> done,
        PlanRequest request,
        Dictionary<string, bool> known
    )
    {
        var here = done.Where(d => d.Session == slot.Id).ToList();
        string key = string.Join(' ', here.Select(h => h.ToString()).Order());
        if (known.TryGetValue(key, out bool fits))
        {
            return fits;
        }

        List<Work> works = [];
        foreach (var own in here.GroupBy(d => d.Athlete))
        {
            AthleteRequest who = request.Athletes.Single(a => a.Athlete.Id == own.Key);
            List<Done> left = [.. own];
            foreach (ContrastPair pair in who.Pairs.Where(p => p.SessionId == slot.Id))
            {
                var both = left.Where(d => d.Exercise == pair.HeavyExerciseId || d.Exercise == pair.LightExerciseId)
                    .ToList();
                if (both.Count == 2)
                {
                    left.RemoveAll(both.Contains);
                    works.Add(
                        new(
                            own.Key,
                            both.Any(d => Phase(d, who, request) == 1) ? 1 : 2,
                            both.Sum(d => SecondsOf(d, who, slot)),
                            [
                                .. both.SelectMany(d => Of(d, request).Kit)
                                    .GroupBy(k => k.Id)
                                    .Select(g => new KitNeed(g.Key, g.Max(k => k.Count))),
                            ]
                        )
                    );
                }
            }

            works.AddRange(
                left.Select(d => new Work(
                    own.Key,
                    Phase(d, who, request),
                    SecondsOf(d, who, slot),
                    [.. Of(d, request).Kit]
                ))
            );
        }

        return known[key] = Place(works, [], slot, request);
    }

    /// <summary>Tries every order: each block begins as early as those placed before it let it.</summary>
    private static bool Place(
        List<Work> left,
        List<(Work Work, int Start)> placed,
        SessionSlot slot,
        PlanRequest request
    )
    {
        if (left.Count == 0)
        {
            return true;
        }

        int opens = (int)(request.Limits.OpeningMinutes * 60);
        int change = (int)(request.Limits.ChangeOverMinutes * 60);
        int closes = slot.Minutes * 60;
        double freshUntil = opens + ((closes - opens) * request.Limits.FreshWithinShare);
        foreach (Work next in left)
        {
            if (next.Phase != 0 && left.Exists(w => w.Athlete == next.Athlete && w.Phase == 0))
            {
                continue;
            }

            // Earliest start among the moments at which something ends (own work, or a piece of kit).
            IEnumerable<int> moments = placed
                .SelectMany(p => new[] { p.Start + p.Work.Seconds, p.Start + p.Work.Seconds + change })
                .Append(opens + change)
                .Order();
            int? start = moments
                .Where(t => t >= opens + change && Free(next, t, placed, change, request))
                .Select(t => (int?)t)
                .FirstOrDefault();
            if (start is not { } at || at + next.Seconds > closes || (next.Phase == 1 && at > freshUntil))
            {
                continue;
            }

            if (Place([.. left.Where(w => !ReferenceEquals(w, next))], [.. placed, (next, at)], slot, request))
            {
                return true;
            }
        }

        return false;
    }

    private static bool Free(Work work, int start, List<(Work Work, int Start)> placed, int change, PlanRequest request)
    {
        foreach (var (other, its) in placed)
        {
            bool apart = start >= its + other.Seconds + change || its >= start + work.Seconds + change;
            // Low work comes first: nothing of the athlete's may be placed before it either.
            bool lowAfter = other.Athlete == work.Athlete && other.Phase == 0 && work.Phase != 0 && start < its;
            if (other.Athlete == work.Athlete && (!apart || lowAfter))
            {
                return false;
            }
        }

        foreach (KitNeed need in work.Kit)
        {
            int count = request.Kit.Where(k => k.Id == need.Id).Sum(k => k.Count);
            var users = placed.Where(p => p.Work.Kit.Exists(k => k.Id == need.Id)).ToList();
            foreach (int t in users.Select(u => u.Start).Append(start))
            {
                if (t < start || t >= start + work.Seconds)
                {
                    continue;
                }

                int use = users
                    .Where(u => u.Start <= t && t < u.Start + u.Work.Seconds)
                    .Sum(u => u.Work.Kit.Single(k => k.Id == need.Id).Count);
                if (use + need.Count > count)
                {
                    return false;
                }
            }
        }

        return true;
    }

    private static int Phase(Done d, AthleteRequest who, PlanRequest request)
    {
        double? drop = who
            .Menu.Single(m => m.SessionId == d.Session && m.Dose.ExerciseId == d.Exercise)
            .Dose.DropHeightM;
        Exercise exercise = Of(d, request);
        return IsLow(exercise, drop) ? 0
            : IsFresh(exercise, drop) ? 1
            : 2;
    }

    private static Exercise Of(Done d, PlanRequest request) =>
        request.Catalogue.Exercises.Single(e => e.Id == d.Exercise);
}
