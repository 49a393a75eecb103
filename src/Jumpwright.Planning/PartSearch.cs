using System.Collections.Immutable;
using Jumpwright.Planning.Rotations;
using Jumpwright.Planning.Searching;
using Jumpwright.Plans;

namespace Jumpwright.Planning;

/// <summary>
/// One athlete, or a few, anew by the search that plans squads; all others stay as they are, on the floor to the second and with
/// the kit they use. The bound is that of all plans in which they do.
/// </summary>
internal static class PartSearch
{
    /// <summary>Deterministic time for an exact week of one athlete, and for the weeks' proofs together.</summary>
    private const double EachWeek = 0.04;

    private const double Proving = 0.15;

    /// <summary>Moves of one athlete for each session.</summary>
    private const int MovesForEachSession = 2000;

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
        if (Standing.Of(previous, request, others) is not { } standing)
        {
            return null;
        }

        Squad squad = new(
            request with
            {
                Athletes = few,
                Locks = [.. request.Locks.Where(l => anew.Contains(l.AthleteId))],
                Wishes = [.. request.Wishes.Where(w => anew.Contains(w.AthleteId))],
                Keeps = [.. request.Keeps.Where(k => anew.Contains(k.AthleteId))],
            },
            KitUse.Of(others)
        );
        using SquadBound bound = new(squad, cancel);
        if (bound.Price(1, null) is not null || new Beginning(squad, cancel).Begin() is not null)
        {
            return null;
        }

        // The few stand beside all others: what is open there already costs them nothing more.
        squad.Share(others, request);
        Floors floors = new(squad, cancel);
        if (!floors.OpenBeside(standing))
        {
            return null;
        }

        new Annealing(squad, null, cancel).Few(bound, EachWeek, MovesForEachSession * squad.Slots.Length);
        bound.ByWeeks(Proving, more: false);
        Found found = floors.Found(bound.Points);
        ImmutableArray<Chosen> chosen = [.. others, .. found.Chosen];
        long points = PlanPoints.Of(chosen.Select(c => (c.Who.Athlete.Id, c.Slot.Id, c.Exercise.Id, c.Sets)), request);
        long most =
            PlanPoints.Gains(others.Select(c => (c.Who.Athlete.Id, c.Slot.Id, c.Exercise.Id, c.Sets)), request)
            + bound.Points
            - (GroupsOf(others) * Evenness.EachGroup(request) / Scope.PointScale);
        return Planner.IfKept(
            found with
            {
                Status = points >= most ? PlanStatus.Optimal : PlanStatus.Feasible,
                Objective = points,
                Bound = Math.Max(points, most),
                Chosen = chosen,
            },
            request with
            {
                Locks =
                [
                    .. request.Locks,
                    .. others.Select(o => new LockedItem(o.Slot.Id, o.Who.Athlete.Id, o.Exercise.Id, o.Sets)),
                ],
            }
        );
    }

    /// <summary>The groups that the others form, whatever the few do.</summary>
    private static int GroupsOf(ImmutableArray<Chosen> others) =>
        others.Select(o => (o.Slot.Id, o.Exercise.Id)).Distinct().Count();
}
