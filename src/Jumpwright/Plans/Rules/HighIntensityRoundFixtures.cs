namespace Jumpwright.Plans.Rules;

/// <summary>Fresh legs for a fixture: no high intensity on its day and the day before.</summary>
public sealed class HighIntensityRoundFixtures : Limit
{
    public override string Id => "high-intensity-round-fixtures";
    public override string Sentence => "No high-intensity work on the day of a fixture or just before it.";
    public override string SourceId => "common-practice";

    public override IEnumerable<Breach> Check(Plan plan, PlanRequest request) =>
        from placed in Reading.Items(plan, request)
        where placed.Item.Dose.HighIntensity || placed.Exercise.IsHighIntensityAt(placed.Item.Dose.DropHeightM)
        from fixture in request.Fixtures
        where FixtureWindow.IsQuietDay(fixture, placed.Slot.Date, request.Limits)
        select new Breach(
            Id,
            placed.Who.Athlete.Id,
            placed.Slot.Id,
            placed.Item.Contacts,
            "contacts",
            $"{placed.Exercise.SaidId} is of high intensity and stands in {placed.Slot.Said}, too near {fixture.Name} on {fixture.Date:uuuu-MM-dd}."
        );
}
