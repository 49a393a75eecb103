using System.Collections.Immutable;
using Jumpwright.Exercises;
using Jumpwright.Progression;
using Jumpwright.Safety;

namespace Jumpwright.Plans.Asking;

/// <summary>
/// Steps that are closed today for nothing but an exercise that is not owned yet, while that one is open: they may be planned
/// for later, after enough sessions of it. Whether those were clean is seen from the log, and then the plan is made again.
/// </summary>
internal static class Foreseeing
{
    /// <summary>What would have to be done before; null when something else closes the exercise too.</summary>
    public static ImmutableArray<Opening>? Of(Exercise exercise, Ladder ladder, LimitBook limits)
    {
        Rung? rung = ladder.Find(exercise.Id);
        if (rung is null || rung.State != RungState.Closed || ladder.ComingBack is not null || exercise.IsHighIntensity)
        {
            return null;
        }

        var openings = ImmutableArray.CreateBuilder<Opening>();
        foreach (RungReason reason in rung.Reasons.Where(r => r.Verdict != CriterionVerdict.Met))
        {
            if (
                exercise.Entry.FirstOrDefault(c => c.Id == reason.CriterionId) is not { OwnedExercise: { } first }
                || ladder.Find(first) is not { State: RungState.Open }
            )
            {
                return null;
            }

            openings.Add(new(first, limits.Whole("sessions-to-own")));
        }

        return openings.Count == 0 ? null : openings.ToImmutable();
    }

    /// <summary>The ladder as it would be then: that one rung open.</summary>
    public static Ladder With(Ladder ladder, Exercise exercise) =>
        ladder with
        {
            Rungs = [.. ladder.Rungs.Select(r => r.ExerciseId == exercise.Id ? r with { State = RungState.Open } : r)],
        };
}
