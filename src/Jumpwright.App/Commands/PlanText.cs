using Jumpwright.App.Desk;
using Jumpwright.App.Wording;
using Jumpwright.Plans;
using Jumpwright.Quantities;

namespace Jumpwright.App.Commands;

/// <summary>A plan as plain text: session by session, athlete by athlete, then what was left out.</summary>
internal static class PlanText
{
    public static void Write(PlannedWeek week, SquadMaterial material, TextWriter to)
    {
        TerminalWords.Use(week.Request.Catalogue);
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
                $"{Dates.Long(session.Slot.Date)}, {Dates.At(session.Slot.Start)}, {session.Slot.Minutes} min"
            );
            foreach (AthleteSession athlete in session.Athletes.Where(a => a.Items.Length > 0))
            {
                to.WriteLine(
                    $"  {names.GetValueOrDefault(athlete.AthleteId, athlete.AthleteId)}: "
                        + $"{athlete.Items.Sum(i => i.Contacts)} contacts"
                );
                foreach (PlannedItem item in athlete.Items)
                {
                    to.WriteLine($"    {TerminalWords.Exercise(item.Dose.ExerciseId)}: {ItemWords.Dose(item)}");
                    foreach (Sentence reason in item.Because.Take(1))
                    {
                        to.WriteLine($"      because {TerminalWords.Of(reason)}");
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
                to.WriteLine(
                    $"  {TextBook.T[$"requirement.{requirement.Kind}"]}: {TerminalWords.Of(requirement.Text)}"
                );
            }
        }

        foreach (Override made in plan.Overrides)
        {
            to.WriteLine();
            to.WriteLine(
                FormattableString.Invariant(
                    $"Overridden: {TerminalWords.Limit(made.Limit)}{(made.AthleteId is { } id ? " of " + names.GetValueOrDefault(id, id) : "")} {made.Value:0.###} instead of {made.Standard:0.###} {made.Unit}, by {made.Who} until {Dates.Iso(made.Until)}: {made.Reason}"
                )
            );
        }

        foreach (Sentence remark in week.Request.Remarks)
        {
            to.WriteLine();
            to.WriteLine(TerminalWords.Of(remark));
        }

        if (plan.Unmet.Length > 0)
        {
            to.WriteLine();
            to.WriteLine("Wished and left out:");
            foreach (IGrouping<string, Unmet> athlete in plan.Unmet.GroupBy(u => u.AthleteId, StringComparer.Ordinal))
            {
                to.WriteLine($"  {names.GetValueOrDefault(athlete.Key, athlete.Key)}:");
                foreach (Unmet unmet in athlete)
                {
                    to.WriteLine($"    {TerminalWords.Wanted(unmet)}: {TerminalWords.Of(unmet.Because)}");
                }
            }
        }
    }
}
