using Google.OrTools.Sat;
using Jumpwright.Plans;

namespace Jumpwright.Planning.Rows;

/// <summary>What a coach asked for by name.</summary>
internal static class WishRows
{
    public static void Add(SquadModel squad)
    {
        foreach (Wish wish in squad.Request.Wishes.OrderBy(w => w.RequirementId, StringComparer.Ordinal))
        {
            if (!squad.Has(wish.AthleteId) && squad.Scope.Only is not null)
            {
                continue;
            }

            BoolVar[] ways =
            [
                .. squad
                    .Choices.Where(c =>
                        c.Who.Athlete.Id == wish.AthleteId
                        && c.Menu.ExerciseId == wish.ExerciseId
                        && (wish.SessionId is null || c.Slot.Id == wish.SessionId)
                        && wish.SetsAtLeast <= c.Menu.Dose.SetsMax
                    )
                    .Select(c => c.AtLeast(wish.SetsAtLeast)),
            ];
            bool asked = squad.Asked.For(
                wish.RequirementId,
                "wish",
                $"{wish.ExerciseId} for {wish.AthleteId} {(wish.SessionId is null ? "" : $"in {wish.SessionId} ")}at least {wish.TimesAtLeast} times{(wish.SetsAtLeast > 0 ? $" with {wish.SetsAtLeast} sets or more" : "")}."
            );
            if (ways.Length < wish.TimesAtLeast)
            {
                bool menuHolds = squad.Asked.ForLimit(
                    "on-the-menu",
                    $"{wish.AthleteId}:{wish.SessionId ?? "any"}:{wish.ExerciseId}",
                    $"{wish.ExerciseId} is open to {wish.AthleteId} in {ways.Length} sessions{(wish.SetsAtLeast > 0 ? " with so many sets" : "")}."
                );
                if (asked && menuHolds)
                {
                    squad.Impossible();
                }
            }
            else if (asked)
            {
                squad.Model.Add(LinearExpr.Sum(ways) >= wish.TimesAtLeast);
            }
        }
    }
}
