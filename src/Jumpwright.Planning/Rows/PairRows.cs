using Google.OrTools.Sat;
using Jumpwright.Plans;
using Jumpwright.Quantities;

namespace Jumpwright.Planning.Rows;

/// <summary>The heavy exercise of a pair only with its light one, set for set.</summary>
internal static class PairRows
{
    public static void Add(SquadModel squad)
    {
        foreach (AthleteRequest who in squad.Athletes)
        {
            foreach (ContrastPair pair in who.Pairs)
            {
                Choice? heavy = squad.Find(who.Athlete.Id, pair.SessionId, pair.HeavyExerciseId);
                Choice? light = squad.Find(who.Athlete.Id, pair.SessionId, pair.LightExerciseId);
                if (
                    heavy is null
                    || !squad.Asked.ForLimit(
                        "pairs-together",
                        $"{who.Athlete.Id}:{pair.SessionId}:{pair.Id}",
                        $"{who.Athlete.Name} does {SaidExercise.ById(pair.HeavyExerciseId):small} only with {SaidExercise.ById(pair.LightExerciseId):small}, set for set ({new SaidSession(pair.SessionId)})."
                    )
                )
                {
                    continue;
                }

                if (
                    light is null
                    || pair.RestS < squad.Request.Limits.PairRestAtLeastS
                    || pair.RestS > squad.Request.Limits.PairRestAtMostS
                )
                {
                    squad.Close(heavy);
                    continue;
                }

                squad.Model.AddImplication(heavy.Done, light.Done);
                squad.Model.Add(heavy.Amount(1) == light.Amount(1)).OnlyEnforceIf(heavy.Done);
            }
        }
    }
}
