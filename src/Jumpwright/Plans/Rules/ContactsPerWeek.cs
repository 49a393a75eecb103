using NodaTime;

namespace Jumpwright.Plans.Rules;

/// <summary>Contacts of a week, Monday to Sunday.</summary>
public sealed class ContactsPerWeek : Limit
{
    public override string Id => "contacts-per-week";
    public override string Sentence => "No more contacts in a week than the athlete's level and age allow.";
    public override string SourceId => "house-rule";

    public override IEnumerable<Breach> Check(Plan plan, PlanRequest request) =>
        from week in Weeks(plan, request)
        where week.Contacts > week.Who.ContactsPerWeekAtMost
        select new Breach(
            Id,
            week.Who.Athlete.Id,
            null,
            week.Contacts - week.Who.ContactsPerWeekAtMost,
            "contacts",
            $"{week.Who.Athlete.Name} would take {week.Contacts} contacts in the week of {week.Of:uuuu-MM-dd}; at most {week.Who.ContactsPerWeekAtMost} are allowed."
        );

    public override IEnumerable<LimitReading> Read(Plan plan, PlanRequest request) =>
        from who in request.Athletes
        let values = Weeks(plan, request)
            .Where(w => w.Who == who)
            .Select(w => ((double)w.Contacts, w.Of.ToString("uuuu-MM-dd", null)))
            .ToList()
        select Reading.AtMost(Id, who.Athlete.Id, "contacts", "week", who.ContactsPerWeekAtMost, values);

    private static IEnumerable<(AthleteRequest Who, LocalDate Of, int Contacts)> Weeks(
        Plan plan,
        PlanRequest request
    ) =>
        Reading
            .Sessions(plan, request)
            .Where(s => !s.Items.IsEmpty)
            .GroupBy(s => (s.Who, Week: PlanRequest.WeekOf(s.Slot.Date)))
            .Select(g => (g.Key.Who, g.Key.Week, g.Sum(s => s.Items.Sum(i => i.Contacts))));
}
