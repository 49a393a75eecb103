using System.Collections.Immutable;
using Jumpwright.Planning.Rotations;
using Jumpwright.Plans;
using Jumpwright.Quantities;

namespace Jumpwright.Planning;

/// <summary>Puts what was found into the plan's own words: items in the order they are done, and the rotation.</summary>
internal static class SessionMaker
{
    public static PlannedSession Of(SessionSlot slot, Found found, PlanRequest request)
    {
        if (!found.Timelines.TryGetValue(slot, out Timeline? timeline))
        {
            return new(slot, [], []);
        }

        var chosen = found.Chosen.Where(c => c.Slot == slot).ToLookup(c => c.Who);
        ImmutableArray<AthleteSession> athletes =
        [
            .. chosen
                .OrderBy(g => g.Key.Athlete.Id, StringComparer.Ordinal)
                .Select(g => new AthleteSession(
                    g.Key.Athlete.Id,
                    [
                        .. timeline
                            .Placed.Where(p => p.Block.AthleteId == g.Key.Athlete.Id)
                            .OrderBy(p => p.Start)
                            .SelectMany(p => p.Block.Turns.Select(t => t.ExerciseId).Distinct(StringComparer.Ordinal))
                            .Select(id => ItemOf(g.First(c => c.Exercise.Id == id), g, request)),
                    ]
                )),
        ];
        return new(slot, athletes, Stations.Of(timeline, Gym.Of(request, slot), athletes));
    }

    /// <summary>The same sessions with only what is locked in them.</summary>
    public static ImmutableArray<PlannedSession> OnlyLocked(
        ImmutableArray<PlannedSession> sessions,
        PlanRequest request
    ) =>
        [
            .. sessions.Select(s =>
                s with
                {
                    Rotation = [],
                    Athletes =
                    [
                        .. s.Athletes.Select(a =>
                            a with
                            {
                                Items =
                                [
                                    .. a.Items.Where(i =>
                                        request.Locks.Any(l =>
                                            l.SessionId == s.Slot.Id
                                            && l.AthleteId == a.AthleteId
                                            && l.ExerciseId == i.Dose.ExerciseId
                                        )
                                    ),
                                ],
                            }
                        ),
                    ],
                }
            ),
        ];

    private static PlannedItem ItemOf(Chosen item, IEnumerable<Chosen> session, PlanRequest request)
    {
        ContrastPair? pair = item.Who.Pairs.FirstOrDefault(p =>
            p.SessionId == item.Slot.Id
            && (p.HeavyExerciseId == item.Exercise.Id || p.LightExerciseId == item.Exercise.Id)
            && session.Any(c => c.Exercise.Id == p.HeavyExerciseId)
            && session.Any(c => c.Exercise.Id == p.LightExerciseId)
        );
        var because = ImmutableArray.CreateBuilder<Sentence>();
        if (
            request.Locks.Any(l =>
                l.SessionId == item.Slot.Id && l.AthleteId == item.Who.Athlete.Id && l.ExerciseId == item.Exercise.Id
            )
        )
        {
            because.Add($"locked by the coach");
        }
        else if (
            request.Wishes.Any(w =>
                w.AthleteId == item.Who.Athlete.Id
                && w.ExerciseId == item.Exercise.Id
                && (w.SessionId is null || w.SessionId == item.Slot.Id)
            )
        )
        {
            because.Add($"asked for by the coach");
        }

        because.AddRange(item.Menu.Because);
        if (pair is not null)
        {
            bool heavy = pair.HeavyExerciseId == item.Exercise.Id;
            because.Add(
                heavy
                    ? Sentence.Of($"heavy partner of {SaidExercise.ById(pair.LightExerciseId):small}, set for set")
                    : Sentence.Of($"light partner of {SaidExercise.ById(pair.HeavyExerciseId):small}, set for set")
            );
        }

        return new(
            item.Menu.Dose,
            item.Sets,
            pair?.Id,
            pair is null ? null
                : pair.HeavyExerciseId == item.Exercise.Id ? "heavy"
                : "light",
            pair?.RestS,
            because.ToImmutable()
        );
    }
}
