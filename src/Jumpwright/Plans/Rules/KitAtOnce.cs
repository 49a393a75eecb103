namespace Jumpwright.Plans.Rules;

/// <summary>At no instant of the rotation is more kit in use than there is.</summary>
public sealed class KitAtOnce : Limit
{
    public override string Id => "kit-at-once";
    public override string Sentence => "At no instant is more kit in use than the squad has.";
    public override string SourceId => "house-rule";

    public override IEnumerable<Breach> Check(Plan plan, PlanRequest request)
    {
        foreach (PlannedSession session in plan.Sessions)
        {
            var uses =
                from entry in session.Rotation
                from need in request.Catalogue.Find(entry.ExerciseId)?.Kit ?? []
                select (need.Id, Entry: entry, Count: need.Count * entry.AthleteIds.Length);
            foreach (var kit in uses.GroupBy(u => u.Id, StringComparer.Ordinal))
            {
                var all = kit.ToList();
                int most = all.Max(at =>
                    all.Where(u =>
                            u.Entry.StartMin <= at.Entry.StartMin + 1e-9 && u.Entry.EndMin > at.Entry.StartMin + 1e-9
                        )
                        .Sum(u => u.Count)
                );
                int count = request.CountOf(kit.Key);
                if (most > count)
                {
                    yield return new(
                        Id,
                        null,
                        session.Slot.Id,
                        most - count,
                        kit.Key,
                        $"{most} of {kit.Key} would be in use at once in {session.Slot.Said}; there are {count}."
                    );
                }
            }
        }
    }
}
