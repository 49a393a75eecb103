using Google.OrTools.Sat;
using Jumpwright.Plans;
using Jumpwright.Quantities;

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
                Wished(wish, squad.Request.NameOf(wish.AthleteId))
            );
            if (ways.Length < wish.TimesAtLeast)
            {
                bool menuHolds = squad.Asked.ForLimit(
                    "on-the-menu",
                    $"{wish.AthleteId}:{wish.SessionId ?? "any"}:{wish.ExerciseId}",
                    wish.SetsAtLeast > 0
                        ? Sentence.Of(
                            $"{SaidExercise.ById(wish.ExerciseId)} is open to {squad.Request.NameOf(wish.AthleteId)} in {ways.Length} sessions with so many sets."
                        )
                        : Sentence.Of(
                            $"{SaidExercise.ById(wish.ExerciseId)} is open to {squad.Request.NameOf(wish.AthleteId)} in {ways.Length} sessions."
                        )
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

    private static Sentence Wished(Wish wish, string name)
    {
        SaidExercise what = SaidExercise.ById(wish.ExerciseId);
        Sentence times = wish.SessionId is { } session
            ? Sentence.Of($"{what} for {name} in {new SaidSession(session)} at least {wish.TimesAtLeast} times")
            : Sentence.Of($"{what} for {name} at least {wish.TimesAtLeast} times");
        return wish.SetsAtLeast > 0
            ? Sentence.Of($"{times} with {wish.SetsAtLeast} sets or more.")
            : Sentence.Of($"{times}.");
    }
}
