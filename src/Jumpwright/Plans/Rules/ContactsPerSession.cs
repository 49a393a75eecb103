namespace Jumpwright.Plans.Rules;

/// <summary>Contacts of a session: the level's band, or fewer where a ruling of the day says so.</summary>
public sealed class ContactsPerSession : Limit
{
    public override string Id => "contacts-per-session";
    public override string Sentence => "No more contacts in a session than the athlete's level, age and rulings allow.";
    public override string SourceId => "handbook-potach-chu";

    public override IEnumerable<Breach> Check(Plan plan, PlanRequest request)
    {
        foreach ((SessionSlot slot, AthleteRequest who, var items) in Reading.Sessions(plan, request))
        {
            int contacts = items.Sum(i => i.Contacts);
            int limit = who.ContactsAtMostOn(slot.Date);
            if (contacts > limit)
            {
                yield return new(
                    Id,
                    who.Athlete.Id,
                    slot.Id,
                    contacts - limit,
                    "contacts",
                    $"{who.Athlete.Name} would take {contacts} contacts in {slot.Said}; at most {limit} are allowed."
                );
            }
        }
    }

    public override IEnumerable<LimitReading> Read(Plan plan, PlanRequest request) =>
        from who in request.Athletes
        let values = Reading
            .Sessions(plan, request)
            .Where(s => s.Who == who && !s.Items.IsEmpty)
            .Select(s => ((double)s.Items.Sum(i => i.Contacts), s.Slot.Id))
            .ToList()
        select Reading.AtMost(
            Id,
            who.Athlete.Id,
            "contacts",
            "session",
            request.Slots.Select(s => who.ContactsAtMostOn(s.Date)).Append(who.ContactsPerSessionAtMost).Min(),
            values
        );
}
