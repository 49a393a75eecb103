namespace Jumpwright.Plans.Rules;

/// <summary>The time line holds every item for as long as its sets take, within the session, and nothing else.</summary>
public sealed class RotationHoldsEveryItem : Limit
{
    public override string Id => "rotation-holds-every-item";
    public override string Sentence => "The time line holds every item for as long as its sets take, and nothing else.";
    public override string SourceId => "house-rule";

    public override IEnumerable<Breach> Check(Plan plan, PlanRequest request)
    {
        foreach (PlannedSession session in plan.Sessions)
        {
            foreach (RotationEntry entry in session.Rotation)
            {
                double outside = Math.Max(
                    Math.Max(request.Limits.OpeningMinutes - entry.StartMin, entry.EndMin - session.Slot.Minutes),
                    entry.StartMin - entry.EndMin
                );
                if (outside > 1e-6)
                {
                    yield return new(
                        Id,
                        null,
                        session.Slot.Id,
                        outside,
                        "min",
                        $"{entry.Station} runs from {entry.StartMin:0.##} to {entry.EndMin:0.##} min in {session.Slot.Said}, outside the session's working time."
                    );
                }
            }

            var planned = session
                .Athletes.SelectMany(a => a.Items.Select(i => (a.AthleteId, i.Dose.ExerciseId, Item: i)))
                .ToLookup(p => (p.AthleteId, p.ExerciseId), p => p.Item);
            var shown = session
                .Rotation.SelectMany(r =>
                    r.AthleteIds.Select(a => (Key: (a, r.ExerciseId), Minutes: r.EndMin - r.StartMin))
                )
                .ToLookup(r => r.Key, r => r.Minutes);
            foreach ((string athlete, string exercise) in planned.Select(p => p.Key).Union(shown.Select(s => s.Key)))
            {
                double needed = planned[(athlete, exercise)]
                    .Sum(i => new MenuItem(session.Slot.Id, i.Dose, [], []).SecondsOf(i.Sets) / 60.0);
                double there = shown[(athlete, exercise)].Sum();
                if (there < needed - 1e-6 || (there > 1e-6 && needed < 1e-6))
                {
                    yield return new(
                        Id,
                        athlete,
                        session.Slot.Id,
                        Math.Abs(needed - there),
                        "min",
                        $"{exercise} of {athlete} takes {needed:0.##} min in {session.Slot.Said}; the time line gives {there:0.##} min."
                    );
                }
            }
        }
    }
}
