using Jumpwright.Quantities;

namespace Jumpwright.Plans.Rules;

/// <summary>Recovery from what was done before the plan starts.</summary>
public sealed class RecoveryFromRecentWork : Limit
{
    public override string Id => "recovery-from-recent-work";
    public override string Sentence => "What was done before the plan starts is recovered from first.";
    public override string SourceId => "handbook-potach-chu";

    public override IEnumerable<Breach> Check(Plan plan, PlanRequest request) =>
        from placed in Reading.Items(plan, request)
        from recent in placed.Who.Recent
        where OrderOfWork.RecoveryHoursOf(placed.Exercise, recent.Tissue) > 0
        let hours = (placed.Slot.StartUtc - recent.EndUtc).TotalHours
        where hours < recent.RecoveryHours - 1e-9
        select new Breach(
            Id,
            placed.Who.Athlete.Id,
            placed.Slot.Id,
            recent.RecoveryHours - hours,
            "h",
            $"{placed.Who.Athlete.Name} would do {placed.Exercise.SaidId:small} in {placed.Slot.Said}, {hours:0.#} h after {SaidExercise.ById(recent.ExerciseId):small}; the {RecoveryHours.InWords(recent.Tissue)} needs {recent.RecoveryHours} h."
        );
}
