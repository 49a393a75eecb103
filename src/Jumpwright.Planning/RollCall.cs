using System.Collections.Immutable;
using Jumpwright.Plans;
using Jumpwright.Quantities;

namespace Jumpwright.Planning;

/// <summary>
/// The door at roll call: who is here, which kit and how many minutes there are. It only ever cuts: no item is added, none gets
/// more sets, nothing is done harder. It follows <see cref="FloorRule"/>, as the tablet does without the program.
/// </summary>
public static class RollCall
{
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
        (ImmutableArray<RotationEntry> turns, ImmutableArray<FloorCut> cuts) = FloorRule.Of(
            session,
            today,
            here,
            minutes,
            today
                .Kit.GroupBy(k => k.Id, StringComparer.Ordinal)
                .ToDictionary(g => g.Key, g => g.Sum(k => k.Count), StringComparer.Ordinal)
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
                        FloorCutReason.KitMissing =>
                            $"There is no {MissingKit(c.ExerciseId, today)} today, or too few.",
                        FloorCutReason.NoLowWorkBefore => $"No landing or low ankle work is left before it.",
                        _ => $"It is done only with its jump, which is left out.",
                    }
                )),
            ]
        );
    }

    private static string MissingKit(string exerciseId, PlanRequest today) =>
        today.Catalogue.Find(exerciseId)?.Kit.FirstOrDefault(k => today.CountOf(k.Id) < k.Count)?.Id ?? "kit";

    private static PlannedItem Unpaired(PlannedItem item) =>
        item with
        {
            Pair = null,
            PairRole = null,
            RestInPairS = null,
        };
}
