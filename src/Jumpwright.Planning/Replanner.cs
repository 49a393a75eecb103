using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Planning.Rotations;
using Jumpwright.Plans;
using Jumpwright.Quantities;
using Jumpwright.Safety;

namespace Jumpwright.Planning;

/// <summary>
/// The door for making a plan anew: after a missed session, a moved fixture, a new symptom, a lock. What can stay stays;
/// what changes is listed with its reason. A tissue that a rule of Safety holds back is loaded in no remaining session more
/// than the earlier plan did: a hard limit, not a wish.
/// </summary>
public static class Replanner
{
    /// <summary>Points for an item that stays, for its sets staying too, and what a new item costs.</summary>
    private const int Stays = 100;
    private const int SameSets = 30;
    private const int New = -60;

    /// <summary>Makes the plan anew from the day of the request on.</summary>
    /// <param name="previous">The plan as it was.</param>
    /// <param name="request">What is known now: slots that remain, fixtures, rulings, locks.</param>
    /// <param name="progress">Told in words how far the search is; may be null.</param>
    /// <param name="cancel">Stops the search.</param>
    public static Replanned Replan(
        Plan previous,
        PlanRequest request,
        IProgress<Sentence>? progress = null,
        CancellationToken cancel = default
    )
    {
        ArgumentNullException.ThrowIfNull(previous);
        ArgumentNullException.ThrowIfNull(request);
        PlanRequest asked = WithCaps(previous, WithKeeps(previous, request));
        if (OneAthlete(previous, asked) is { } few && PartSearch.Solve(previous, asked, few, cancel) is { } part)
        {
            return new(part, asked, Changes(previous, part, asked));
        }

        Plan plan = Planner.Solve(asked, progress, cancel);
        if (plan.Objective is { } value && AsItWas(previous, asked, plan) is { } same && same.Objective >= value)
        {
            // What was found is no better than what was there: then nothing changes that need not.
            plan = same;
        }

        return new(plan, asked, Changes(previous, plan, asked));
    }

    /// <summary>The earlier plan, as far as its sessions remain, under what is asked now; null when it breaks any of it.</summary>
    private static Plan? AsItWas(Plan previous, PlanRequest request, Plan found)
    {
        var chosen = ImmutableArray.CreateBuilder<Chosen>();
        foreach ((string session, string athlete, PlannedItem item) in Items(previous))
        {
            AthleteRequest? who = request.Athletes.FirstOrDefault(a => a.Athlete.Id == athlete);
            if (
                request.Slots.FirstOrDefault(s => s.Id == session) is not { } slot
                || request.HasBegun(athlete, session)
            )
            {
                continue;
            }

            if (
                who?.OnMenu(session, item.Dose.ExerciseId) is not { } menu
                || request.Catalogue.Find(item.Dose.ExerciseId) is not { } exercise
                || item.Sets < menu.Dose.SetsMin
                || item.Sets > menu.Dose.SetsMax
            )
            {
                return null;
            }

            chosen.Add(new(who, slot, menu, exercise, item.Sets));
        }

        SquadRotation rotation = SquadRotation.Of(request, chosen.ToImmutable(), Asked.All());
        long points = PlanPoints.Of(chosen.Select(c => (c.Who.Athlete.Id, c.Slot.Id, c.Exercise.Id, c.Sets)), request);
        return rotation.Complete
            ? Planner.IfKept(
                new(
                    PlanStatus.Feasible,
                    points,
                    Math.Max(points, (long)(found.BestBound ?? points)),
                    chosen.ToImmutable(),
                    rotation.Timelines
                ),
                request
            )
            : null;
    }

    /// <summary>
    /// The few athletes for whom something changed, if they are few: those with an item that is no longer open to them, a
    /// tissue newly held back, or a lock that the earlier plan does not keep. Null when they are many.
    /// </summary>
    private static ImmutableArray<AthleteRequest>? OneAthlete(Plan previous, PlanRequest request)
    {
        ImmutableArray<AthleteRequest> changed = [.. request.Athletes.Where(a => Concerned(a, previous, request))];
        return changed.Length is > 0 and <= 3 && request.Athletes.Length > 3 ? changed : null;
    }

    private static bool Concerned(AthleteRequest who, Plan previous, PlanRequest request)
    {
        string id = who.Athlete.Id;
        var items = Items(previous).Where(i => i.AthleteId == id).ToList();
        bool gone = items.Exists(i =>
            request.Slots.All(s => s.Id != i.SessionId)
            || who.OnMenu(i.SessionId, i.Item.Dose.ExerciseId) is not { } menu
            || menu.Dose.Contacts(1) != i.Item.Dose.Contacts(1)
            || i.Item.Sets < menu.Dose.SetsMin
            || i.Item.Sets > menu.Dose.SetsMax
        );
        bool lockBroken = request.Locks.Any(l =>
            l.AthleteId == id
            && !items.Exists(i =>
                i.SessionId == l.SessionId && i.Item.Dose.ExerciseId == l.ExerciseId && i.Item.Sets == l.Sets
            )
        );
        return gone || lockBroken || request.Wishes.Any(w => w.AthleteId == id) || Breaks(who, previous, request);
    }

    /// <summary>True when the athlete's items as they were break a limit of what is asked now.</summary>
    private static bool Breaks(AthleteRequest who, Plan previous, PlanRequest request)
    {
        PlanRequest one = request with { Athletes = [who], Locks = [], Wishes = [] };
        Plan own = previous with
        {
            Sessions =
            [
                .. previous
                    .Sessions.Where(s => request.Slots.Any(r => r.Id == s.Slot.Id))
                    .Select(s =>
                        s with
                        {
                            Slot = request.Slots.First(r => r.Id == s.Slot.Id),
                            Rotation = [],
                            Athletes = [.. s.Athletes.Where(a => a.AthleteId == who.Athlete.Id)],
                        }
                    ),
            ],
        };
        return LeftOut.BreachesOfOne(own, one).Any(b => b.LimitId != "on-the-menu");
    }

    private static PlanRequest WithKeeps(Plan previous, PlanRequest request)
    {
        var before = Items(previous)
            .ToLookup(i => (i.SessionId, i.AthleteId, i.Item.Dose.ExerciseId), i => i.Item.Sets);
        var shown = previous.Sessions.Select(s => s.Slot.Id).ToHashSet(StringComparer.Ordinal);
        return request with
        {
            Keeps =
            [
                .. from who in request.Athletes
                from menu in who.Menu
                where shown.Contains(menu.SessionId)
                let sets = before[(menu.SessionId, who.Athlete.Id, menu.ExerciseId)].FirstOrDefault()
                select sets > 0
                    ? new KeepWish(menu.SessionId, who.Athlete.Id, menu.ExerciseId, sets, Stays, SameSets)
                    : new KeepWish(menu.SessionId, who.Athlete.Id, menu.ExerciseId, 0, New, 0),
            ],
        };
    }

    /// <summary>No remaining session loads a tissue that is held back more than the earlier plan did.</summary>
    private static PlanRequest WithCaps(Plan previous, PlanRequest request) =>
        request with
        {
            Athletes =
            [
                .. request.Athletes.Select(who =>
                    who with
                    {
                        Caps =
                        [
                            .. who.Caps,
                            .. from tissue in HeldBack(who)
                            from slot in request.Slots
                            select new LoadCap(
                                "tissue-load-after-symptom",
                                [slot.Id],
                                tissue,
                                LoadBefore(previous, request, who, slot.Id, tissue),
                                $"So much the plan before asked of it, and it is sore."
                            ),
                        ],
                    }
                ),
            ],
        };

    private static IEnumerable<Tissue> HeldBack(AthleteRequest who) =>
        who
            .RulingsByDay.Values.SelectMany(r => r)
            .Select(r => r.Effect)
            .OfType<TierAtMost>()
            .Select(t => t.Tissue)
            .Distinct()
            .Order();

    private static int LoadBefore(
        Plan previous,
        PlanRequest request,
        AthleteRequest who,
        string sessionId,
        Tissue tissue
    ) =>
        Items(previous)
            .Where(i => i.AthleteId == who.Athlete.Id && i.SessionId == sessionId)
            .Sum(i =>
                i.Item.Contacts
                * (request.Catalogue.Find(i.Item.Dose.ExerciseId)?.Demand.GetValueOrDefault(tissue) ?? 0)
            );

    private static ImmutableArray<PlanChange> Changes(Plan previous, Plan now, PlanRequest request)
    {
        var before = Items(previous).ToDictionary(i => (i.SessionId, i.AthleteId, i.Item.Dose.ExerciseId), i => i.Item);
        var after = Items(now).ToDictionary(i => (i.SessionId, i.AthleteId, i.Item.Dose.ExerciseId), i => i.Item);
        return
        [
            .. from key in before.Keys.Union(after.Keys)
            let was = before.GetValueOrDefault(key)?.Sets ?? 0
            let its = after.GetValueOrDefault(key)?.Sets ?? 0
            where was != its
            // What was done of it stands as done; that it is not planned again is no change.
            where !request.HasBegun(key.AthleteId, key.SessionId)
            orderby key.SessionId, key.AthleteId, key.ExerciseId
            select new PlanChange(key.SessionId, key.AthleteId, key.ExerciseId, was, its, Why(key, was, its, request)),
        ];
    }

    private static Sentence Why(
        (string SessionId, string AthleteId, string ExerciseId) key,
        int before,
        int now,
        PlanRequest request
    )
    {
        AthleteRequest? who = request.Athletes.FirstOrDefault(a => a.Athlete.Id == key.AthleteId);
        SessionSlot? slot = request.Slots.FirstOrDefault(s => s.Id == key.SessionId);
        if (slot is null)
        {
            return $"There is no session {new SaidSession(key.SessionId)} any more.";
        }

        if (who is null)
        {
            return $"{key.AthleteId} is not planned for any more.";
        }

        if (request.Catalogue.Find(key.ExerciseId) is { } exercise && now == 0)
        {
            Ruling? ruling = who.RulingsOn(slot.Date).FirstOrDefault(r => r.Effect.Forbids(exercise.Facts));
            if (ruling is not null)
            {
                return ruling.Because;
            }

            FixtureWindow? near = request
                .Fixtures.Select(f => FixtureWindow.Of(f, request))
                .FirstOrDefault(w =>
                    (exercise.IsHighIntensity && FixtureWindow.IsQuietDay(w.Fixture, slot.Date, request.Limits))
                    || (OrderOfWork.IsTopTier(exercise) && w.HoursWithin(slot) > 0)
                );
            if (near is not null)
            {
                return $"Too near {near.Fixture.Name} on {near.Fixture.Date:uuuu-MM-dd}.";
            }

            Sentence? unrecovered = request
                .Fixtures.Select(f => FixtureWindow.Unrecovered(exercise, slot, f, request))
                .FirstOrDefault(said => said is not null);
            if (unrecovered is not null)
            {
                return unrecovered;
            }

            foreach (Fixture fixture in request.Fixtures)
            {
                if (FixtureWindow.SoreLanding(exercise, slot, fixture, who) is { } sore)
                {
                    return SoreBeforeFixture.Because(sore, fixture.Name, fixture.Date);
                }
            }

            if (who.OnMenu(key.SessionId, key.ExerciseId) is null)
            {
                return $"{SaidExercise.ById(key.ExerciseId)} is not open to {who.Athlete.Name} in {slot.Said} any more.";
            }
        }

        if (
            request.Locks.Any(l =>
                l.AthleteId == key.AthleteId && l.SessionId == key.SessionId && l.ExerciseId == key.ExerciseId
            )
        )
        {
            return $"{Sentence.Of($"locked by the coach"):capital}.";
        }

        if (
            now < before
            && who.Caps.FirstOrDefault(c => c.LimitId == "taper-before-fixture" && c.SessionIds.Contains(slot.Id))
                is { } taper
        )
        {
            return taper.Because;
        }

        LoadCap? cap = who.Caps.FirstOrDefault(c =>
            c.LimitId == "tissue-load-after-symptom" && c.SessionIds.Contains(key.SessionId)
        );
        return cap is not null
            ? Sentence.Of(
                $"The {TissueOf(cap.Tissue)} may be asked for no more than before: {cap.AtMost} contacts × tier."
            )
            : Sentence.Of($"So that the rest fits: minutes, kit and contacts are shared anew.");
    }

    private static Sentence TissueOf(Tissue? tissue) =>
        tissue switch
        {
            { } one => LimitNames.Of(one),
            null => $"bone",
        };

    internal static IEnumerable<(string SessionId, string AthleteId, PlannedItem Item)> Items(Plan plan) =>
        plan.Sessions.SelectMany(s => s.Athletes.SelectMany(a => a.Items.Select(i => (s.Slot.Id, a.AthleteId, i))));
}
