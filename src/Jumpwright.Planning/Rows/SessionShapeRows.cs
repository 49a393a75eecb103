using Google.OrTools.Sat;
using Jumpwright.Plans;
using Jumpwright.Quantities;

namespace Jumpwright.Planning.Rows;

/// <summary>How many exercises a session holds, and that it begins with low work.</summary>
internal static class SessionShapeRows
{
    public static void Add(SquadModel squad)
    {
        foreach (AthleteRequest who in squad.Athletes)
        {
            foreach (SessionSlot slot in squad.Slots)
            {
                var here = squad.In(who, slot).ToList();
                if (here.Count > 0)
                {
                    AddAtMost(squad, who, slot, here);
                    AddAtLeast(squad, who, slot, here);
                    AddLowFirst(squad, who, slot, here);
                }
            }
        }
    }

    private static void AddAtMost(SquadModel squad, AthleteRequest who, SessionSlot slot, List<Choice> here)
    {
        if (
            here.Count > who.ExercisesPerSessionAtMost
            && squad.Asked.ForLimit(
                "exercises-per-session-at-most",
                $"{who.Athlete.Id}:{slot.Id}",
                $"At most {who.ExercisesPerSessionAtMost} exercises for {who.Athlete.Name} in {slot.Said}."
            )
        )
        {
            squad.Model.Add(LinearExpr.Sum(here.Select(c => c.Done)) <= who.ExercisesPerSessionAtMost);
        }
    }

    private static void AddAtLeast(SquadModel squad, AthleteRequest who, SessionSlot slot, List<Choice> here)
    {
        if (
            who.ExercisesPerSessionAtLeast > 1
            && squad.Asked.ForLimit(
                "exercises-per-session-at-least",
                $"{who.Athlete.Id}:{slot.Id}",
                $"At least {who.ExercisesPerSessionAtLeast} exercises in a session of {who.Athlete.Name} that holds any ({slot.Said})."
            )
        )
        {
            BoolVar used = squad.Model.NewBoolVar($"{who.Athlete.Id}/{slot.Id}/used");
            foreach (Choice choice in here)
            {
                squad.Model.AddImplication(choice.Done, used);
            }

            squad.Model.Add(
                LinearExpr.Sum(here.Select(c => c.Done)) >= LinearExpr.Term(used, who.ExercisesPerSessionAtLeast)
            );
        }
    }

    private static void AddLowFirst(SquadModel squad, AthleteRequest who, SessionSlot slot, List<Choice> here)
    {
        var low = here.Where(c => c.Phase == 0).ToList();
        var needing = low.Count > 0 ? here.Except(low).ToList() : here.Where(c => c.HighIntensity).ToList();
        if (
            needing.Count == 0
            || !squad.Asked.ForLimit(
                "low-work-first",
                $"{who.Athlete.Id}:{slot.Id}",
                $"{who.Athlete.Name}'s session {slot.Said} begins with landing or low ankle work."
            )
        )
        {
            return;
        }

        foreach (Choice choice in needing)
        {
            squad.Model.AddBoolOr([.. low.Select(c => (ILiteral)c.Done), choice.Done.Not()]);
        }
    }
}
