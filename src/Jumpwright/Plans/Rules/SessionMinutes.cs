using System.Collections.Immutable;

namespace Jumpwright.Plans.Rules;

/// <summary>What an athlete does fits into the session, with changing over and rest within pairs, and leaves the opening and some minutes to wait.</summary>
public sealed class SessionMinutes : Limit
{
    public override string Id => "session-minutes";
    public override string Sentence =>
        "An athlete's sets, rests and changes fit into the session, less its opening and waiting minutes.";
    public override string SourceId => "house-rule";

    public override IEnumerable<Breach> Check(Plan plan, PlanRequest request) =>
        from session in Reading.Sessions(plan, request)
        let seconds = SecondsOf(session.Slot, session.Who, session.Items, request)
        let limit = request.WorkSeconds(session.Slot)
        where seconds > limit
        select new Breach(
            Id,
            session.Who.Athlete.Id,
            session.Slot.Id,
            (seconds - limit) / 60.0,
            "min",
            $"{session.Who.Athlete.Name} would need {seconds / 60.0:0.#} min in {session.Slot.Said}; {limit / 60.0:0.#} min are there."
        );

    public override IEnumerable<LimitReading> Read(Plan plan, PlanRequest request) =>
        from who in request.Athletes
        let values = Reading
            .Sessions(plan, request)
            .Where(s => s.Who == who && !s.Items.IsEmpty)
            .Select(s => (SecondsOf(s.Slot, who, s.Items, request) / 60.0, s.Slot.Id))
            .ToList()
        where !request.Slots.IsEmpty
        select Reading.AtMost(
            Id,
            who.Athlete.Id,
            "min",
            "session",
            request.Slots.Min(s => request.WorkSeconds(s)) / 60.0,
            values
        );

    private static int SecondsOf(
        SessionSlot slot,
        AthleteRequest who,
        ImmutableArray<PlannedItem> items,
        PlanRequest request
    )
    {
        int seconds = 0;
        foreach (PlannedItem item in items)
        {
            MenuItem menu = new(slot.Id, item.Dose, [], []);
            seconds += menu.SecondsOf(item.Sets) + who.PairSeconds(menu, item.Sets) + request.ChangeOverSeconds;
        }

        return seconds;
    }
}
