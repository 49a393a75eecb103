using System.Collections.Immutable;
using Jumpwright.Planning.Rotations;
using Jumpwright.Plans;
using Jumpwright.Quantities;

namespace Jumpwright.Planning;

/// <summary>
/// The door at roll call: who is here, which kit and how many minutes there are. It only ever cuts: no item is added, none gets
/// more sets, nothing is done harder. While the kit is as planned it follows <see cref="FloorRule"/>, as the tablet does without the
/// program; with less kit the rotation is made anew from today's approved items.
/// </summary>
public static class RollCall
{
    private static readonly Sentence NoLowWorkBefore = $"There is no time for landing or low ankle work before it.";

    /// <summary>Today's session for those who are here.</summary>
    /// <param name="session">The session as approved.</param>
    /// <param name="request">The request it was planned from.</param>
    /// <param name="present">Ids of the athletes who are here.</param>
    /// <param name="kit">Kit at hand; what is not named is as planned.</param>
    /// <param name="minutes">Minutes at hand; null: as planned. More than planned gives nothing more to do.</param>
    public static RolledCall Make(
        PlannedSession session,
        PlanRequest request,
        IEnumerable<string> present,
        IReadOnlyDictionary<string, int>? kit = null,
        int? minutes = null
    )
    {
        ArgumentNullException.ThrowIfNull(session);
        ArgumentNullException.ThrowIfNull(request);
        HashSet<string> here = new(present, StringComparer.Ordinal);
        SessionSlot slot = session.Slot with
        {
            Minutes = Math.Min(minutes ?? session.Slot.Minutes, session.Slot.Minutes),
        };
        PlanRequest today = request with
        {
            Slots = [.. request.Slots.Select(s => s.Id == slot.Id ? slot : s)],
            Kit =
            [
                .. request.Kit.Select(k =>
                    kit is not null && kit.TryGetValue(k.Id, out int count)
                        ? k with
                        {
                            Count = Math.Clamp(count, 0, k.Count),
                        }
                        : k
                ),
            ],
        };
        if (today.Kit.SequenceEqual(request.Kit))
        {
            return ByRule(session, today, slot, here, minutes);
        }

        List<Chosen> left =
        [
            .. from one in session.Athletes
            where here.Contains(one.AthleteId)
            let who = today.Athletes.First(a => a.Athlete.Id == one.AthleteId)
            from item in one.Items
            let exercise = today.Catalogue.Find(item.Dose.ExerciseId)!
            let menu = who.OnMenu(slot.Id, exercise.Id)
                ?? new MenuItem(slot.Id, item.Dose, [.. Enumerable.Repeat(1, item.Dose.SetsMax)], item.Because)
            select new Chosen(who, slot, menu, exercise, item.Sets),
        ];
        var cuts = ImmutableArray.CreateBuilder<PlanChange>();
        foreach (Chosen item in left.Where(c => c.Exercise.Kit.Any(k => today.CountOf(k.Id) < k.Count)).ToList())
        {
            Take(
                left,
                item,
                0,
                cuts,
                $"There is no {item.Exercise.Kit.First(k => today.CountOf(k.Id) < k.Count).Id} today, or too few."
            );
        }

        Gym gym = Gym.Of(today, slot);
        while (true)
        {
            Mend(left, cuts, today);
            ImmutableArray<Block> blocks = Blocks.Of(today, slot, left);
            (Timeline timeline, ImmutableArray<Block> without) = GreedyRotation.Partial(blocks, gym);
            if (without.IsEmpty)
            {
                return new(SessionOf(session, slot, left, timeline, gym), today, Joined(cuts));
            }

            // Those who wait longest give way, the cheapest of theirs first.
            foreach (Block block in without.OrderByDescending(b => b.Seconds).Take(1 + (without.Length / 2)))
            {
                Chosen item = left.Where(c =>
                        c.Who.Athlete.Id == block.AthleteId && block.Turns.Any(t => t.ExerciseId == c.Exercise.Id)
                    )
                    .OrderBy(c => c.Menu.PointsOf(c.Sets) / (double)c.Sets)
                    .First();
                int sets = item.Sets > item.Menu.Dose.SetsMin && PartnerOf(item, left) is null ? item.Sets - 1 : 0;
                Take(left, item, sets, cuts, $"It has no place on the time line with who and what is here.");
            }
        }
    }

    private static RolledCall ByRule(
        PlannedSession session,
        PlanRequest today,
        SessionSlot slot,
        HashSet<string> here,
        int? minutes
    )
    {
        (ImmutableArray<RotationEntry> turns, ImmutableArray<FloorCut> cuts) = FloorRule.Of(
            session,
            today,
            here,
            minutes
        );
        HashSet<(string, string)> gone = [.. cuts.Select(c => (c.AthleteId, c.ExerciseId))];
        var before = session.Athletes.ToDictionary(a => a.AthleteId, StringComparer.Ordinal);
        ImmutableArray<AthleteSession> athletes =
        [
            .. session
                .Athletes.Where(a => here.Contains(a.AthleteId))
                .Select(a => new AthleteSession(
                    a.AthleteId,
                    [
                        .. a
                            .Items.Where(i => !gone.Contains((a.AthleteId, i.Dose.ExerciseId)))
                            .Select(i =>
                                i.Pair?.Split('+').Any(p => gone.Contains((a.AthleteId, p))) == true ? Unpaired(i) : i
                            ),
                    ]
                ))
                .Where(a => a.Items.Length > 0),
        ];
        return new RolledCall(
            new PlannedSession(slot, athletes, turns),
            today,
            [
                .. cuts.Select(c => new PlanChange(
                    slot.Id,
                    c.AthleteId,
                    c.ExerciseId,
                    before[c.AthleteId].Items.First(i => i.Dose.ExerciseId == c.ExerciseId).Sets,
                    0,
                    c.Reason switch
                    {
                        FloorCutReason.NotOverInTime => $"It would not be over in {slot.Minutes} minutes.",
                        FloorCutReason.NotFreshByThen =>
                            $"It must be done fresh, and begins too late for a session of {slot.Minutes} minutes.",
                        FloorCutReason.NoLowWorkBefore => NoLowWorkBefore,
                        _ => $"It is done only with its jump, which is left out.",
                    }
                )),
            ]
        );
    }

    private static void Take(
        List<Chosen> left,
        Chosen item,
        int sets,
        ImmutableArray<PlanChange>.Builder cuts,
        Sentence because
    )
    {
        if (!left.Remove(item))
        {
            return;
        }

        cuts.Add(new(item.Slot.Id, item.Who.Athlete.Id, item.Exercise.Id, item.Sets, sets, because));
        if (sets > 0)
        {
            left.Add(item with { Sets = sets });
        }
        else if (PartnerOf(item, left) is { } heavy && heavy.Exercise.ContactsPerRep == 0)
        {
            Take(left, heavy, 0, cuts, $"{heavy.Exercise.SaidId} is done only with {item.Exercise.SaidId}.");
        }
    }

    /// <summary>Without low work to begin with, nothing that needs it is left.</summary>
    private static void Mend(List<Chosen> left, ImmutableArray<PlanChange>.Builder cuts, PlanRequest request)
    {
        foreach (var one in left.GroupBy(c => c.Who.Athlete.Id, StringComparer.Ordinal).ToList())
        {
            if (one.Any(c => c.Phase == 0))
            {
                continue;
            }

            foreach (Chosen item in one.Where(c => FloorNeeds.NeedLow(c.Who, c.Slot.Id, c.Menu.Dose, request)))
            {
                Take(left, item, 0, cuts, NoLowWorkBefore);
            }
        }
    }

    private static PlannedItem Unpaired(PlannedItem item) =>
        item with
        {
            Pair = null,
            PairRole = null,
            RestInPairS = null,
        };

    private static Chosen? PartnerOf(Chosen item, List<Chosen> left)
    {
        ContrastPair? pair = item.Who.Pairs.FirstOrDefault(p =>
            p.SessionId == item.Slot.Id
            && (p.HeavyExerciseId == item.Exercise.Id || p.LightExerciseId == item.Exercise.Id)
        );
        string? other =
            pair is null ? null
            : pair.HeavyExerciseId == item.Exercise.Id ? pair.LightExerciseId
            : pair.HeavyExerciseId;
        return other is null ? null : left.Find(c => c.Who.Athlete.Id == item.Who.Athlete.Id && c.Exercise.Id == other);
    }

    private static PlannedSession SessionOf(
        PlannedSession before,
        SessionSlot slot,
        List<Chosen> left,
        Timeline timeline,
        Gym gym
    )
    {
        var was = before.Athletes.ToDictionary(a => a.AthleteId, StringComparer.Ordinal);
        ImmutableArray<AthleteSession> athletes =
        [
            .. left.GroupBy(c => c.Who.Athlete.Id, StringComparer.Ordinal)
                .OrderBy(g => g.Key, StringComparer.Ordinal)
                .Select(g => new AthleteSession(
                    g.Key,
                    [
                        .. timeline
                            .Placed.Where(p => p.Block.AthleteId == g.Key)
                            .OrderBy(p => p.Start)
                            .SelectMany(p => p.Block.Turns.Select(t => t.ExerciseId).Distinct(StringComparer.Ordinal))
                            .Select(id =>
                            {
                                PlannedItem item = was[g.Key].Items.First(i => i.Dose.ExerciseId == id);
                                bool alone =
                                    item.Pair is not null
                                    && !g.Any(c => c.Exercise.Id != id && item.Pair.Split('+').Contains(c.Exercise.Id));
                                return (alone ? Unpaired(item) : item) with
                                {
                                    Sets = g.First(c => c.Exercise.Id == id).Sets,
                                };
                            }),
                    ]
                )),
        ];
        return new(slot, athletes, Stations.Of(timeline, gym, athletes));
    }

    /// <summary>Several cuts of one item as one.</summary>
    private static ImmutableArray<PlanChange> Joined(ImmutableArray<PlanChange>.Builder cuts) =>
        [
            .. cuts.GroupBy(c => (c.AthleteId, c.ExerciseId))
                .Select(g => g.First() with { SetsNow = g.Last().SetsNow, Because = g.Last().Because }),
        ];
}
