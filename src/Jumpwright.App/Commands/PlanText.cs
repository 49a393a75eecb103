using Jumpwright.App.Desk;
using Jumpwright.App.Wording;
using Jumpwright.Plans;

namespace Jumpwright.App.Commands;

/// <summary>A plan as plain text: session by session, athlete by athlete, then what was left out.</summary>
internal static class PlanText
{
    public static void Write(PlannedWeek week, SquadMaterial material, TextWriter to)
    {
        Plan plan = week.Plan;
        Dictionary<string, string> names = material.Histories.ToDictionary(
            h => h.Athlete.Id,
            h => h.Athlete.Name,
            StringComparer.Ordinal
        );
        to.WriteLine(PlanWords.Proof(plan));
        foreach (PlannedSession session in plan.Sessions)
        {
            to.WriteLine();
            to.WriteLine(
                $"{Dates.Long(session.Slot.Date)}, {Dates.At(session.Slot.Start)}, {session.Slot.Minutes} min ({session.Slot.Id})"
            );
            foreach (AthleteSession athlete in session.Athletes.Where(a => a.Items.Length > 0))
            {
                to.WriteLine(
                    $"  {names.GetValueOrDefault(athlete.AthleteId, athlete.AthleteId)}: "
                        + $"{athlete.Items.Sum(i => i.Contacts)} contacts"
                );
                foreach (PlannedItem item in athlete.Items)
                {
                    string name = week.Request.Catalogue.Find(item.Dose.ExerciseId)?.Name ?? item.Dose.ExerciseId;
                    to.WriteLine($"    {name}: {ItemWords.Dose(item)}");
                    foreach (string reason in item.Because.Take(1))
                    {
                        to.WriteLine($"      because {reason}");
                    }
                }
            }
        }

        foreach (Collision collision in plan.Collisions)
        {
            to.WriteLine();
            to.WriteLine("These collide; without any one of them the rest can be met:");
            foreach (Requirement requirement in collision.Requirements)
            {
                to.WriteLine($"  {requirement.Kind}: {requirement.Text}");
            }
        }

        foreach (Override made in plan.Overrides)
        {
            to.WriteLine();
            to.WriteLine(
                FormattableString.Invariant(
                    $"Overridden: {made.Limit}{(made.AthleteId is { } id ? " of " + names.GetValueOrDefault(id, id) : "")} {made.Value:0.###} instead of {made.Standard:0.###} {made.Unit}, by {made.Who} until {Dates.Iso(made.Until)}: {made.Reason}"
                )
            );
        }

        foreach (string remark in week.Request.Remarks)
        {
            to.WriteLine();
            to.WriteLine(remark);
        }

        if (plan.Unmet.Length > 0)
        {
            to.WriteLine();
            to.WriteLine("Wished and left out:");
            foreach (Unmet unmet in plan.Unmet)
            {
                to.WriteLine(
                    $"  {names.GetValueOrDefault(unmet.AthleteId, unmet.AthleteId)}: {unmet.Wanted}, because "
                        + string.Join("; ", unmet.Because)
                );
            }
        }
    }
}
