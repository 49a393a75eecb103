using Jumpwright.Quantities;

namespace Jumpwright.Plans.Rules;

/// <summary>Nobody is at two stations at once, and everybody has the time to change over.</summary>
public sealed class OnePlaceAtATime : Limit
{
    public override string Id => "one-place-at-a-time";
    public override string Sentence => "Nobody is at two stations at once, and there is time to change over.";
    public override string SourceId => "house-rule";

    public override IEnumerable<Breach> Check(Plan plan, PlanRequest request)
    {
        foreach (PlannedSession session in plan.Sessions)
        {
            foreach (string id in session.Rotation.SelectMany(r => r.AthleteIds).Distinct(StringComparer.Ordinal))
            {
                AthleteRequest? who = request.Athletes.FirstOrDefault(a => a.Athlete.Id == id);
                var entries = session.Rotation.Where(r => r.AthleteIds.Contains(id)).OrderBy(r => r.StartMin).ToList();
                for (int i = 1; i < entries.Count; i++)
                {
                    double needed = SameBlock(who, session.Slot.Id, entries[i - 1].ExerciseId, entries[i].ExerciseId)
                        ? 0
                        : request.ChangeOverSeconds / 60.0;
                    double there = entries[i].StartMin - entries[i - 1].EndMin;
                    if (there < needed - 1e-6)
                    {
                        yield return new(
                            Id,
                            id,
                            session.Slot.Id,
                            needed - there,
                            "min",
                            $"{request.NameOf(id)} has {there:0.##} min from {SaidExercise.ById(entries[i - 1].ExerciseId):small} to {SaidExercise.ById(entries[i].ExerciseId):small} in {session.Slot.Said}; {needed:0.##} min are needed."
                        );
                    }
                }
            }
        }
    }

    private static bool SameBlock(AthleteRequest? who, string sessionId, string one, string other) =>
        one == other
        || (
            who is not null
            && who.Pairs.Any(p =>
                p.SessionId == sessionId
                && (
                    (p.HeavyExerciseId == one && p.LightExerciseId == other)
                    || (p.HeavyExerciseId == other && p.LightExerciseId == one)
                )
            )
        );
}
