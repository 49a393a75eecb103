using System.Collections.Immutable;
using Jumpwright.Exercises;

namespace Jumpwright.Plans.Rules;

/// <summary>Walks a finished plan beside its request. What the request does not know is left to <see cref="OnTheMenu"/>.</summary>
internal static class Reading
{
    public static IEnumerable<(SessionSlot Slot, AthleteRequest Who, ImmutableArray<PlannedItem> Items)> Sessions(
        Plan plan,
        PlanRequest request
    )
    {
        // The first of a name counts, as everywhere; a dictionary, since squads of thirty over weeks are read often.
        var slots = request.Slots.GroupBy(s => s.Id).ToDictionary(g => g.Key, g => g.First(), StringComparer.Ordinal);
        var athletes = request
            .Athletes.GroupBy(a => a.Athlete.Id)
            .ToDictionary(g => g.Key, g => g.First(), StringComparer.Ordinal);
        return from session in plan.Sessions
            let slot = slots.GetValueOrDefault(session.Slot.Id)
            where slot is not null
            from one in session.Athletes
            let who = athletes.GetValueOrDefault(one.AthleteId)
            where who is not null
            select (slot, who, one.Items);
    }

    public static IEnumerable<(SessionSlot Slot, AthleteRequest Who, PlannedItem Item, Exercise Exercise)> Items(
        Plan plan,
        PlanRequest request
    ) =>
        from session in Sessions(plan, request)
        from item in session.Items
        let exercise = request.Catalogue.Find(item.Dose.ExerciseId)
        where exercise is not null
        select (session.Slot, session.Who, item, exercise);

    /// <summary>A reading of an at-most limit from values that each belong to a place.</summary>
    public static LimitReading AtMost(
        string id,
        string? athleteId,
        string unit,
        string period,
        double limit,
        IReadOnlyCollection<(double Value, string At)> values
    )
    {
        (double Value, string At)? highest = values.Count == 0 ? null : values.MaxBy(v => v.Value);
        return new(
            id,
            athleteId,
            "at-most",
            unit,
            period,
            limit,
            highest?.Value,
            values.Count == 0 ? null : values.Min(v => v.Value),
            highest?.At
        );
    }
}
