using System.Collections.Immutable;
using Google.OrTools.Sat;
using Jumpwright.Planning.Rotations;
using Jumpwright.Plans;

namespace Jumpwright.Planning;

/// <summary>
/// One athlete, or a few, anew; all others stay as they are, as locked items, and so does the kit they use. The bound is
/// that of all plans with those locks.
/// </summary>
internal static class PartSearch
{
    private const int RoundsMost = 12;

    /// <summary>The plan, judged; null when it can't be done like that and the whole squad has to be asked.</summary>
    public static Plan? Solve(
        Plan previous,
        PlanRequest request,
        ImmutableArray<AthleteRequest> few,
        CancellationToken cancel
    )
    {
        var anew = few.Select(a => a.Athlete.Id).ToHashSet(StringComparer.Ordinal);
        ImmutableArray<Chosen> others =
        [
            .. from item in Replanner.Items(previous)
            where !anew.Contains(item.AthleteId)
            let who = request.Athletes.FirstOrDefault(a => a.Athlete.Id == item.AthleteId)
            let slot = request.Slots.FirstOrDefault(s => s.Id == item.SessionId)
            let menu = who?.OnMenu(item.SessionId, item.Item.Dose.ExerciseId)
            let exercise = request.Catalogue.Find(item.Item.Dose.ExerciseId)
            where menu is not null && slot is not null && exercise is not null
            select new Chosen(who, slot, menu, exercise, item.Item.Sets),
        ];
        PlanRequest locked = request with
        {
            Locks =
            [
                .. request.Locks,
                .. others.Select(o => new LockedItem(o.Slot.Id, o.Who.Athlete.Id, o.Exercise.Id, o.Sets)),
            ],
        };
        var kit = (
            from slot in request.Slots
            from key in KitUse.Keys(request)
            let used = others
                .Where(o => o.Slot == slot)
                .Sum(o =>
                    KitUse
                        .Of(o.Exercise, o.Phase)
                        .Where(k => k.Key == key)
                        .Sum(k => (long)k.Count * (o.Menu.SecondsOf(o.Sets) + o.Who.PairSeconds(o.Menu, o.Sets)))
                )
            select (Key: (Kit: key, Session: slot.Id), Left: KitUse.Seconds(request, key, slot) - used)
        ).ToImmutableDictionary(k => k.Key, k => Math.Max(0, k.Left));
        long othersPoints = PlanPoints.Of(
            others.Select(o => (o.Who.Athlete.Id, o.Slot.Id, o.Exercise.Id, o.Sets)),
            request
        );
        long? bound = null;
        for (int round = 0; round < RoundsMost; round++)
        {
            cancel.ThrowIfCancellationRequested();
            SquadModel model = SquadModel.Of(request, Asked.All(), new Scope { Only = few, KitSeconds = kit });
            Solution solution = Solution.Of(
                model,
                Math.Min(0.5, request.Budget.DeterministicTime / 4),
                request.Budget.WallSeconds,
                gap: 0.002
            );
            if (solution.Points is null)
            {
                return null;
            }

            bound ??= solution.Bound;
            ImmutableArray<Chosen> chosen = [.. others, .. solution.Chosen];
            SquadRotation rotation = SquadRotation.Of(request, chosen, Asked.All());
            if (rotation.Complete)
            {
                long points = PlanPoints.Of(
                    chosen.Select(c => (c.Who.Athlete.Id, c.Slot.Id, c.Exercise.Id, c.Sets)),
                    request
                );
                long most = othersPoints + (bound ?? 0);
                Found found = new(
                    points == most ? PlanStatus.Optimal : PlanStatus.Feasible,
                    points,
                    Math.Max(points, most),
                    chosen,
                    rotation.Timelines
                );
                return Planner.Finished(found, locked);
            }

            foreach (SessionSlot slot in rotation.Unknown.Concat(rotation.Impossible.Select(i => i.Slot)))
            {
                // The others stay, so only what these few use can give way.
                foreach (var key in kit.Keys.Where(k => k.Session == slot.Id).ToList())
                {
                    long used = solution
                        .Chosen.Where(c => c.Slot == slot)
                        .Sum(c =>
                            KitUse
                                .Of(c.Exercise, c.Phase)
                                .Where(k => k.Key == key.Kit)
                                .Sum(k => (long)k.Count * c.Menu.SecondsOf(c.Sets))
                        );
                    kit = kit.SetItem(key, Math.Min(kit[key], used * 3 / 4));
                }
            }
        }

        return null;
    }
}
