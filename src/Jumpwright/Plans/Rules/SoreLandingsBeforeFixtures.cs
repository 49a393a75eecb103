using Jumpwright.Safety;

namespace Jumpwright.Plans.Rules;

/// <summary>Before a fixture a sore tissue takes no landings: how it took them would show on the fixture's own morning.</summary>
public sealed class SoreLandingsBeforeFixtures : Limit
{
    public override string Id => "sore-landings-before-fixture";
    public override string Sentence =>
        "No landing on the floor loads a sore tissue on the day of a fixture or just before it.";
    public override string SourceId => "common-practice";

    public override IEnumerable<Breach> Check(Plan plan, PlanRequest request) =>
        from placed in Reading.Items(plan, request)
        from fixture in request.Fixtures
        let sore = FixtureWindow.SoreLanding(placed.Exercise, placed.Slot, fixture, placed.Who)
        where sore is not null
        select new Breach(
            Id,
            placed.Who.Athlete.Id,
            placed.Slot.Id,
            placed.Item.Contacts,
            "contacts",
            $"{placed.Exercise.SaidId} lands on the floor with a sore {TissueWords.Of(sore.Value)} and stands in {placed.Slot.Said}, too near {fixture.Name} on {fixture.Date:uuuu-MM-dd}."
        );
}
