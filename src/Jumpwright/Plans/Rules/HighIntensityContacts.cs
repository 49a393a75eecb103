namespace Jumpwright.Plans.Rules;

/// <summary>High-intensity contacts of a session.</summary>
public sealed class HighIntensityContacts : Limit
{
    public override string Id => "high-intensity-contacts";
    public override string Sentence => "No more high-intensity contacts in a session than the athlete's share.";
    public override string SourceId => "house-rule";

    public override IEnumerable<Breach> Check(Plan plan, PlanRequest request) =>
        from session in Reading.Sessions(plan, request)
        let contacts = session.Items.Where(i => i.Dose.HighIntensity).Sum(i => i.Contacts)
        let limit = session.Who.HighIntensityContactsPerSessionAtMost
        where contacts > limit
        select new Breach(
            Id,
            session.Who.Athlete.Id,
            session.Slot.Id,
            contacts - limit,
            "contacts",
            $"{session.Who.Athlete.Name} would take {contacts} high-intensity contacts in {session.Slot.Said}; at most {limit} are allowed."
        );

    public override IEnumerable<LimitReading> Read(Plan plan, PlanRequest request) =>
        from who in request.Athletes
        let values = Reading
            .Sessions(plan, request)
            .Where(s => s.Who == who && !s.Items.IsEmpty)
            .Select(s => ((double)s.Items.Where(i => i.Dose.HighIntensity).Sum(i => i.Contacts), s.Slot.Id))
            .ToList()
        select Reading.AtMost(
            Id,
            who.Athlete.Id,
            "contacts",
            "session",
            who.HighIntensityContactsPerSessionAtMost,
            values
        );
}
