using Jumpwright.Quantities;

namespace Jumpwright.Plans.Rules;

/// <summary>Only what is open to the athlete in that session, at the dose that was found for it, once a session.</summary>
public sealed class OnTheMenu : Limit
{
    public override string Id => "on-the-menu";
    public override string Sentence =>
        "Only exercises that are open to the athlete in that session, at their dose and once a session.";
    public override string SourceId => "house-rule";

    public override IEnumerable<Breach> Check(Plan plan, PlanRequest request)
    {
        foreach (PlannedSession session in plan.Sessions)
        {
            bool known = request.Slots.Contains(session.Slot);
            if (!known || plan.Sessions.Count(s => s.Slot.Id == session.Slot.Id) > 1)
            {
                yield return new(
                    Id,
                    null,
                    session.Slot.Id,
                    1,
                    "sessions",
                    $"The session {session.Slot.Said} was not asked for, or stands twice."
                );
            }

            foreach (AthleteSession one in session.Athletes)
            {
                AthleteRequest? who = request.Athletes.FirstOrDefault(a => a.Athlete.Id == one.AthleteId);
                foreach (var group in one.Items.GroupBy(i => i.Dose.ExerciseId, StringComparer.Ordinal))
                {
                    MenuItem? menu = who?.OnMenu(session.Slot.Id, group.Key);
                    PlannedItem item = group.First();
                    bool kept =
                        menu is not null
                        && group.Count() == 1
                        && request.Catalogue.Find(group.Key) is not null
                        && menu.Dose == item.Dose
                        && item.Sets >= menu.Dose.SetsMin
                        && item.Sets <= menu.Dose.SetsMax;
                    if (!kept || session.Athletes.Count(a => a.AthleteId == one.AthleteId) > 1)
                    {
                        yield return new(
                            Id,
                            one.AthleteId,
                            session.Slot.Id,
                            group.Sum(i => i.Sets),
                            "sets",
                            $"{SaidExercise.ById(group.Key)} with {item.Sets} sets is not open to {request.NameOf(one.AthleteId)} in {session.Slot.Said}, or stands twice."
                        );
                    }
                }
            }
        }
    }
}
