using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Quantities;
using NodaTime;

namespace Jumpwright.Plans;

/// <summary>Makes the planner's request from what is known of the squad: profiles, ladders, doses, rulings, fixtures.</summary>
public static class Requests
{
    public static Outcome<PlanRequest> For(
        Squad squad,
        ImmutableArray<History> histories,
        Catalogue catalogue,
        LocalDate from,
        int weeks,
        SolveBudget? budget = null
    ) => throw new NotImplementedException();
}
