using Jumpwright.Plans;
using Jumpwright.Quantities;

namespace Jumpwright.Planning.Rows;

/// <summary>Locked items stand as they were.</summary>
internal static class LockRows
{
    public static void Add(SquadModel squad)
    {
        foreach (LockedItem locked in squad.Request.Locks.OrderBy(l => l.RequirementId, StringComparer.Ordinal))
        {
            if (!squad.Has(locked.AthleteId) && squad.Scope.Only is not null)
            {
                continue;
            }

            Choice? choice = squad.Find(locked.AthleteId, locked.SessionId, locked.ExerciseId);
            bool open =
                choice is not null
                && locked.Sets >= choice.Menu.Dose.SetsMin
                && locked.Sets <= choice.Menu.Dose.SetsMax;
            string name = squad.Request.NameOf(locked.AthleteId);
            bool asked = squad.Asked.For(
                locked.RequirementId,
                "lock",
                $"{SaidExercise.ById(locked.ExerciseId)} of {name} in {new SaidSession(locked.SessionId)} is locked at {locked.Sets} sets."
            );
            if (!open)
            {
                bool menuHolds = squad.Asked.ForLimit(
                    "on-the-menu",
                    $"{locked.AthleteId}:{locked.SessionId}:{locked.ExerciseId}",
                    choice is null
                        ? Sentence.Of(
                            $"{SaidExercise.ById(locked.ExerciseId)} is not open to {name} in {new SaidSession(locked.SessionId)}."
                        )
                        : Sentence.Of(
                            $"{SaidExercise.ById(locked.ExerciseId)} is open to {name} with {choice.Menu.Dose.SetsMin} to {choice.Menu.Dose.SetsMax} sets in {new SaidSession(locked.SessionId)}."
                        )
                );
                if (asked && menuHolds)
                {
                    squad.Impossible();
                }
            }
            else if (asked)
            {
                squad.Model.AddBoolAnd([choice!.AtLeast(locked.Sets)]);
                if (locked.Sets < choice.Menu.Dose.SetsMax)
                {
                    squad.Model.AddBoolAnd([choice.AtLeast(locked.Sets + 1).Not()]);
                }
            }
        }
    }
}
