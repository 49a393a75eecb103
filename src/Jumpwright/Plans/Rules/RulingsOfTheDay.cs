namespace Jumpwright.Plans.Rules;

/// <summary>Safety's rulings: symptoms, stop signs, age, body mass, restrictions, operations.</summary>
public sealed class RulingsOfTheDay : Limit
{
    public override string Id => "rulings-of-the-day";
    public override string Sentence => "Nothing that a ruling of safety forbids to the athlete on that day.";
    public override string SourceId => "house-rule";

    public override IEnumerable<Breach> Check(Plan plan, PlanRequest request) =>
        from placed in Reading.Items(plan, request)
        from ruling in placed.Who.RulingsOn(placed.Slot.Date)
        where ruling.Effect.Forbids(placed.Exercise.FactsAt(placed.Item.Dose.DropHeightM))
        select new Breach(
            Id,
            placed.Who.Athlete.Id,
            placed.Slot.Id,
            placed.Item.Sets,
            "sets",
            $"{placed.Exercise.SaidId} is forbidden to {placed.Who.Athlete.Name} in {placed.Slot.Said} ({ruling.LimitId}): {ruling.Because}"
        );
}
