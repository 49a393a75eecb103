using Jumpwright.Quantities;

namespace Jumpwright.Plans.Rules;

/// <summary>What a coach asked for by name stands in the plan.</summary>
public sealed class WishesKept : Limit
{
    public override string Id => "wishes-kept";
    public override string Sentence => "What a coach asked for by name stands in the plan.";
    public override string SourceId => "house-rule";

    public override IEnumerable<Breach> Check(Plan plan, PlanRequest request)
    {
        if (plan.Status is PlanStatus.Infeasible or PlanStatus.NoneFound)
        {
            yield break;
        }

        foreach (Wish wish in request.Wishes)
        {
            int times = plan
                .Sessions.Where(s => wish.SessionId is null || s.Slot.Id == wish.SessionId)
                .Count(s =>
                    s.Athletes.Any(a =>
                        a.AthleteId == wish.AthleteId
                        && a.Items.Any(i => i.Dose.ExerciseId == wish.ExerciseId && i.Sets >= wish.SetsAtLeast)
                    )
                );
            if (times < wish.TimesAtLeast)
            {
                yield return new(
                    Id,
                    wish.AthleteId,
                    wish.SessionId,
                    wish.TimesAtLeast - times,
                    "sessions",
                    $"{SaidExercise.ById(wish.ExerciseId)} was asked for {request.NameOf(wish.AthleteId)} at least {wish.TimesAtLeast} times; the plan has it {times} times."
                );
            }
        }
    }
}
