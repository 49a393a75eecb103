using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using Jumpwright.Exercises;

namespace Jumpwright.Plans.Rules;

/// <summary>Walks a finished plan beside its request. What the request does not know is left to <see cref="OnTheMenu"/>.</summary>
internal static class Reading
{
    /// <summary>The last walk of each plan, kept as long as the plan is: every limit asks for the same one.</summary>
    private static readonly ConditionalWeakTable<Plan, Walk> Walks = [];

    public static ImmutableArray<(SessionSlot Slot, AthleteRequest Who, ImmutableArray<PlannedItem> Items)> Sessions(
        Plan plan,
        PlanRequest request
    ) => Of(plan, request).Sessions;

    public static ImmutableArray<(SessionSlot Slot, AthleteRequest Who, PlannedItem Item, Exercise Exercise)> Items(
        Plan plan,
        PlanRequest request
    ) => Of(plan, request).Items;

    /// <summary>The items of one athlete.</summary>
    public static IEnumerable<(SessionSlot Slot, AthleteRequest Who, PlannedItem Item, Exercise Exercise)> ItemsOf(
        AthleteRequest who,
        Plan plan,
        PlanRequest request
    ) => Of(plan, request).ByAthlete[who.Athlete.Id];

    private static Walk Of(Plan plan, PlanRequest request)
    {
        if (Walks.TryGetValue(plan, out Walk? last) && ReferenceEquals(last.Request, request))
        {
            return last;
        }

        Walk walk = new(plan, request);
        Walks.AddOrUpdate(plan, walk);
        return walk;
    }

    private sealed class Walk
    {
        public Walk(Plan plan, PlanRequest request)
        {
            Request = request;
            // The first of a name counts, as everywhere.
            Dictionary<string, SessionSlot> slots = new(StringComparer.Ordinal);
            foreach (SessionSlot slot in request.Slots)
            {
                slots.TryAdd(slot.Id, slot);
            }

            Dictionary<string, AthleteRequest> athletes = new(StringComparer.Ordinal);
            foreach (AthleteRequest who in request.Athletes)
            {
                athletes.TryAdd(who.Athlete.Id, who);
            }

            Sessions =
            [
                .. from session in plan.Sessions
                let slot = slots.GetValueOrDefault(session.Slot.Id)
                where slot is not null
                from one in session.Athletes
                let who = athletes.GetValueOrDefault(one.AthleteId)
                where who is not null
                select (slot, who, one.Items),
            ];
            Items =
            [
                .. from session in Sessions
                from item in session.Items
                let exercise = request.Catalogue.Find(item.Dose.ExerciseId)
                where exercise is not null
                select (session.Slot, session.Who, item, exercise),
            ];
            ByAthlete = Items.ToLookup(i => i.Who.Athlete.Id, StringComparer.Ordinal);
        }

        public PlanRequest Request { get; }

        public ImmutableArray<(
            SessionSlot Slot,
            AthleteRequest Who,
            ImmutableArray<PlannedItem> Items
        )> Sessions { get; }

        public ImmutableArray<(
            SessionSlot Slot,
            AthleteRequest Who,
            PlannedItem Item,
            Exercise Exercise
        )> Items { get; }

        public ILookup<
            string,
            (SessionSlot Slot, AthleteRequest Who, PlannedItem Item, Exercise Exercise)
        > ByAthlete { get; }
    }

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
