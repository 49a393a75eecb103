namespace Jumpwright.Plans.Rules;

/// <summary>Not more exercises than can be done well.</summary>
public sealed class ExercisesPerSessionAtMost : Limit
{
    public override string Id => "exercises-per-session-at-most";
    public override string Sentence => "No more different exercises in a session than can be done well.";
    public override string SourceId => "house-rule";

    public override IEnumerable<Breach> Check(Plan plan, PlanRequest request) =>
        from session in Reading.Sessions(plan, request)
        let limit = session.Who.ExercisesPerSessionAtMost
        where session.Items.Length > limit
        select new Breach(
            Id,
            session.Who.Athlete.Id,
            session.Slot.Id,
            session.Items.Length - limit,
            "exercises",
            $"{session.Who.Athlete.Name} would do {session.Items.Length} exercises in {session.Slot.Said}; at most {limit} are allowed."
        );

    public override IEnumerable<LimitReading> Read(Plan plan, PlanRequest request) =>
        from who in request.Athletes
        let values = Reading
            .Sessions(plan, request)
            .Where(s => s.Who == who && !s.Items.IsEmpty)
            .Select(s => ((double)s.Items.Length, s.Slot.Id))
            .ToList()
        select Reading.AtMost(Id, who.Athlete.Id, "exercises", "session", who.ExercisesPerSessionAtMost, values);
}
