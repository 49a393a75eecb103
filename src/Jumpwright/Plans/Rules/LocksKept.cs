using Jumpwright.Quantities;

namespace Jumpwright.Plans.Rules;

/// <summary>Locked items stand as they were.</summary>
public sealed class LocksKept : Limit
{
    public override string Id => "locks-kept";
    public override string Sentence => "Locked items stand as they were.";
    public override string SourceId => "house-rule";

    public override IEnumerable<Breach> Check(Plan plan, PlanRequest request)
    {
        if (plan.Status is PlanStatus.Infeasible or PlanStatus.NoneFound)
        {
            yield break;
        }

        foreach (LockedItem locked in request.Locks)
        {
            int sets = plan
                .Sessions.Where(s => s.Slot.Id == locked.SessionId)
                .SelectMany(s => s.Athletes)
                .Where(a => a.AthleteId == locked.AthleteId)
                .SelectMany(a => a.Items)
                .Where(i => i.Dose.ExerciseId == locked.ExerciseId)
                .Sum(i => i.Sets);
            if (sets != locked.Sets)
            {
                yield return new(
                    Id,
                    locked.AthleteId,
                    locked.SessionId,
                    Math.Abs(sets - locked.Sets),
                    "sets",
                    $"{SaidExercise.ById(locked.ExerciseId)} of {request.NameOf(locked.AthleteId)} in {new SaidSession(locked.SessionId)} is locked at {locked.Sets} sets; the plan has {sets}."
                );
            }
        }
    }
}
