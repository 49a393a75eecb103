namespace Jumpwright.Plans.Rules;

/// <summary>A fixture is demanding too: what work asks a tissue to recover is over when it begins.</summary>
public sealed class RecoveryBeforeFixtures : Limit
{
    public override string Id => "recovery-before-fixture";
    public override string Sentence =>
        "The hours that work asks a tissue to recover pass before a fixture, as before the next demanding session.";
    public override string SourceId => "common-practice";

    public override IEnumerable<Breach> Check(Plan plan, PlanRequest request) =>
        from placed in Reading.Items(plan, request)
        from fixture in request.Fixtures
        let missing = FixtureWindow.RecoveryMissing(placed.Exercise, placed.Slot, fixture, request)
        where missing > 0
        select new Breach(
            Id,
            placed.Who.Athlete.Id,
            placed.Slot.Id,
            missing,
            "h",
            $"{placed.Exercise.SaidId} asks for {placed.Exercise.MostRecoveryHours} h of recovery and stands in {placed.Slot.Said}, {missing:0.#} h too near to {fixture.Name} on {fixture.Date:uuuu-MM-dd}."
        );
}
