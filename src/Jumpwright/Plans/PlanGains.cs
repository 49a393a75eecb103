using Jumpwright.Plans.Asking;

namespace Jumpwright.Plans;

/// <summary>
/// What a plan gives the squad, as counts that two plans can be compared by: the objective weighs the same things, but its points also hold
/// what it is worth that items stay, and what groups and unevenness cost.
/// </summary>
/// <param name="Sessions">Sessions of athletes in which there is work.</param>
/// <param name="SessionsOpen">Sessions of athletes in which anything is open to them.</param>
/// <param name="Sets">Sets that count for the qualities of the athletes who do them, week by week, up to as many as are wished for.</param>
/// <param name="SetsWished">Sets that are wished for.</param>
/// <param name="Steps">Exercises open to an athlete and not yet owned that stand in the plan.</param>
/// <param name="StepsOpen">Such exercises that might.</param>
/// <param name="Contacts">Ground contacts.</param>
public sealed record PlanGains(
    int Sessions,
    int SessionsOpen,
    int Sets,
    int SetsWished,
    int Steps,
    int StepsOpen,
    int Contacts
)
{
    public static PlanGains Of(Plan plan, PlanRequest request)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(request);
        var items = (
            from session in plan.Sessions
            from one in session.Athletes
            from item in one.Items
            select (one.AthleteId, Slot: session.Slot, Item: item)
        ).ToLookup(i => i.AthleteId, StringComparer.Ordinal);
        int sets = 0;
        int wished = 0;
        int steps = 0;
        int stepsOpen = 0;
        foreach (AthleteRequest who in request.Athletes)
        {
            var theirs = items[who.Athlete.Id].ToList();
            foreach (QualityGoal goal in who.Goals)
            {
                int done = theirs
                    .Where(i => PlanRequest.WeekOf(i.Slot.Date) == goal.WeekOf)
                    .Where(i => request.Trains(i.Item.Dose.ExerciseId) == goal.Quality)
                    .Sum(i => i.Item.Sets);
                sets += Math.Min(done, goal.SetPoints.Length);
                wished += goal.SetPoints.Length;
            }

            HashSet<string> open =
            [
                .. who.Menu.Where(m => m.Because.Any(b => b.Reason is OpenStep)).Select(m => m.ExerciseId),
            ];
            stepsOpen += open.Count;
            steps += theirs.Select(i => i.Item.Dose.ExerciseId).Distinct(StringComparer.Ordinal).Count(open.Contains);
        }

        return new(
            items.Sum(who => who.Select(i => i.Slot.Id).Distinct(StringComparer.Ordinal).Count()),
            request.Athletes.Sum(a => a.Menu.Select(m => m.SessionId).Distinct(StringComparer.Ordinal).Count()),
            sets,
            wished,
            steps,
            stepsOpen,
            items.Sum(who => who.Sum(i => i.Item.Contacts))
        );
    }

    /// <summary>
    /// By how much another plan could be better at most, as a part of what this one is worth beyond what is locked; null where there is
    /// no proof, or nothing to take a part of.
    /// </summary>
    public static double? CouldBeBetterBy(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return plan is { Objective: { } worth, BestBound: { } bound } && worth - plan.ObjectiveEmpty > 0
            ? Math.Max(0, bound - worth) / (worth - plan.ObjectiveEmpty)
            : null;
    }
}
