using Google.OrTools.Sat;
using Jumpwright.Plans;
using Jumpwright.Quantities;

namespace Jumpwright.Planning.Rows;

/// <summary>Contacts of a session, of a week, and those of high intensity.</summary>
internal static class ContactRows
{
    public static void Add(SquadModel squad)
    {
        foreach (AthleteRequest who in squad.Athletes)
        {
            foreach (SessionSlot slot in squad.Slots)
            {
                var here = squad.In(who, slot).ToList();
                AtMost(
                    squad,
                    here,
                    "contacts-per-session",
                    $"{who.Athlete.Id}:{slot.Id}",
                    who.ContactsAtMostOn(slot.Date),
                    $"At most {who.ContactsAtMostOn(slot.Date)} contacts for {who.Athlete.Name} in {slot.Said}."
                );
                AtMost(
                    squad,
                    [.. here.Where(c => c.Menu.Dose.HighIntensity)],
                    "high-intensity-contacts",
                    $"{who.Athlete.Id}:{slot.Id}",
                    who.HighIntensityContactsPerSessionAtMost,
                    $"At most {who.HighIntensityContactsPerSessionAtMost} high-intensity contacts for {who.Athlete.Name} in {slot.Said}."
                );
            }

            foreach (var week in squad.ByAthlete(who).GroupBy(c => PlanRequest.WeekOf(c.Slot.Date)))
            {
                AtMost(
                    squad,
                    [.. week],
                    "contacts-per-week",
                    $"{who.Athlete.Id}:{week.Key:uuuu-MM-dd}",
                    who.ContactsPerWeekAtMost,
                    $"At most {who.ContactsPerWeekAtMost} contacts for {who.Athlete.Name} in the week of {week.Key:uuuu-MM-dd}."
                );
            }
        }
    }

    private static void AtMost(
        SquadModel squad,
        List<Choice> choices,
        string limitId,
        string subject,
        int limit,
        Sentence text
    )
    {
        if (
            choices.Sum(c => c.Menu.Dose.Contacts(c.Menu.Dose.SetsMax)) <= limit
            || !squad.Asked.ForLimit(limitId, subject, text)
        )
        {
            return;
        }

        LinearExprBuilder sum = LinearExpr.NewBuilder();
        foreach (Choice choice in choices)
        {
            choice.AddTo(sum, choice.Menu.Dose.Contacts(1));
        }

        squad.Model.Add((LinearExpr)sum <= limit);
    }
}
