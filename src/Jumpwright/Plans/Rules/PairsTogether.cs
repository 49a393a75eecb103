using Jumpwright.Quantities;

namespace Jumpwright.Plans.Rules;

/// <summary>A heavy partner is done only with its light one, set for set, with 3 to 7 min between.</summary>
public sealed class PairsTogether : Limit
{
    public override string Id => "pairs-together";
    public override string Sentence =>
        "The heavy exercise of a contrast pair is done only with its light partner, set for set, with its rest.";
    public override string SourceId => "common-practice";

    public override IEnumerable<Breach> Check(Plan plan, PlanRequest request)
    {
        foreach ((SessionSlot slot, AthleteRequest who, var items) in Reading.Sessions(plan, request))
        {
            foreach (ContrastPair pair in who.Pairs.Where(p => p.SessionId == slot.Id))
            {
                PlannedItem? heavy = items.FirstOrDefault(i => i.Dose.ExerciseId == pair.HeavyExerciseId);
                PlannedItem? light = items.FirstOrDefault(i => i.Dose.ExerciseId == pair.LightExerciseId);
                if (heavy is null)
                {
                    continue;
                }

                bool kept =
                    light is not null
                    && light.Sets == heavy.Sets
                    && heavy is { PairRole: "heavy" }
                    && light is { PairRole: "light" }
                    && heavy.Pair == pair.Id
                    && light.Pair == pair.Id
                    && items.IndexOf(light) == items.IndexOf(heavy) + 1
                    && RestKept(heavy, request.Limits)
                    && RestKept(light, request.Limits);
                if (!kept)
                {
                    yield return new(
                        Id,
                        who.Athlete.Id,
                        slot.Id,
                        Math.Abs(heavy.Sets - (light?.Sets ?? 0)),
                        "sets",
                        $"{SaidExercise.ById(pair.HeavyExerciseId)} stands in {who.Athlete.Name}'s session {slot.Said} without its partner {SaidExercise.ById(pair.LightExerciseId):small} set for set, or without the rest between them."
                    );
                }
            }
        }
    }

    private static bool RestKept(PlannedItem item, SquadLimits limits) =>
        item.RestInPairS is { } rest && rest >= limits.PairRestAtLeastS && rest <= limits.PairRestAtMostS;
}
