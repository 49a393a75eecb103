namespace Jumpwright.Plans.Rules;

/// <summary>A session that holds anything holds enough to come for.</summary>
public sealed class ExercisesPerSessionAtLeast : Limit
{
    public override string Id => "exercises-per-session-at-least";
    public override string Sentence => "A session that holds any exercise holds at least so many.";
    public override string SourceId => "house-rule";

    public override IEnumerable<Breach> Check(Plan plan, PlanRequest request) =>
        from session in Reading.Sessions(plan, request)
        let limit = session.Who.ExercisesPerSessionAtLeast
        where !session.Items.IsEmpty && session.Items.Length < limit
        select new Breach(
            Id,
            session.Who.Athlete.Id,
            session.Slot.Id,
            limit - session.Items.Length,
            "exercises",
            $"{session.Who.Athlete.Name} would do {session.Items.Length} exercises in {session.Slot.Said}; a session holds at least {limit}."
        );
}
