namespace Jumpwright.Plans.Rules;

/// <summary>Nothing of the top demand tier within the hours round a fixture.</summary>
public sealed class TopTierRoundFixtures : Limit
{
    public override string Id => "top-tier-round-fixtures";
    public override string Sentence =>
        "No exercise of the top demand tier within the hours before and after a fixture.";
    public override string SourceId => "common-practice";

    public override IEnumerable<Breach> Check(Plan plan, PlanRequest request)
    {
        var windows = request.Fixtures.Select(f => FixtureWindow.Of(f, request)).ToList();
        return from placed in Reading.Items(plan, request)
            where OrderOfWork.IsTopTier(placed.Exercise)
            from window in windows
            let hours = window.HoursWithin(placed.Slot)
            where hours > 0
            select new Breach(
                Id,
                placed.Who.Athlete.Id,
                placed.Slot.Id,
                hours,
                "h",
                $"{placed.Exercise.SaidId} asks the top tier and stands in {placed.Slot.Said}, within {request.Limits.TopTierHoursRoundFixture} h of {window.Fixture.Name} on {window.Fixture.Date:uuuu-MM-dd}."
            );
    }
}
