using Google.OrTools.Sat;
using Jumpwright.Plans;
using Jumpwright.Quantities;

namespace Jumpwright.Planning.Rows;

/// <summary>A step that is closed today comes after what opens it.</summary>
internal static class OpeningRows
{
    public static void Add(SquadModel squad)
    {
        foreach (Choice choice in squad.Choices)
        {
            foreach (Opening opening in choice.Menu.After)
            {
                if (
                    !squad.Asked.ForLimit(
                        "opens-in-order",
                        $"{choice.Who.Athlete.Id}:{choice.Slot.Id}:{choice.Exercise.Id}",
                        $"{choice.Exercise.SaidId} opens to {choice.Who.Athlete.Name} after {opening.Sessions} sessions of {SaidExercise.ById(opening.ExerciseId):small}."
                    )
                )
                {
                    continue;
                }

                BoolVar[] before =
                [
                    .. squad
                        .ByAthlete(choice.Who)
                        .Where(c => c.Exercise.Id == opening.ExerciseId && c.Slot.Date < choice.Slot.Date)
                        .Select(c => c.Done),
                ];
                if (before.Length < opening.Sessions)
                {
                    squad.Close(choice);
                    continue;
                }

                // Any one session left out, the others must still hold all but one: tighter for the relaxation than the sum.
                squad.Coupling.Add(
                    squad.Model.Add(LinearExpr.Sum(before) >= LinearExpr.Term(choice.Done, opening.Sessions)).Index
                );
                if (opening.Sessions > 1)
                {
                    foreach (BoolVar left in before)
                    {
                        squad.Coupling.Add(
                            squad
                                .Model.Add(
                                    LinearExpr.Sum(before.Where(b => b.Index != left.Index))
                                        >= LinearExpr.Term(choice.Done, opening.Sessions - 1)
                                )
                                .Index
                        );
                    }
                }
            }
        }
    }
}
