using Jumpwright.Quantities;

namespace Jumpwright.Plans.Rules;

/// <summary>A step that is closed today comes only after what opens it was done often enough in earlier sessions of the plan.</summary>
public sealed class OpensInOrder : Limit
{
    public override string Id => "opens-in-order";
    public override string Sentence =>
        "A step that is closed today comes only after what opens it was done often enough in the plan.";
    public override string SourceId => "common-practice";

    public override IEnumerable<Breach> Check(Plan plan, PlanRequest request)
    {
        foreach (var (slot, who, _, exercise) in Reading.Items(plan, request))
        {
            foreach (Opening opening in who.OnMenu(slot.Id, exercise.Id)?.After ?? [])
            {
                int before = Reading
                    .ItemsOf(who, plan, request)
                    .Count(i => i.Exercise.Id == opening.ExerciseId && i.Slot.Date < slot.Date);
                if (before < opening.Sessions)
                {
                    yield return new(
                        Id,
                        who.Athlete.Id,
                        slot.Id,
                        opening.Sessions - before,
                        "sessions",
                        $"{exercise.SaidId} of {who.Athlete.Name} in {slot.Said} comes after {before} sessions of {SaidExercise.ById(opening.ExerciseId):small}; it opens after {opening.Sessions}."
                    );
                }
            }
        }
    }
}
