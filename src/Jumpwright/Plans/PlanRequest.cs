using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Dosing;
using Jumpwright.Exercises;
using Jumpwright.Quantities;
using Jumpwright.Safety;
using NodaTime;

namespace Jumpwright.Plans;

/// <summary>Everything a plan depends on; the planner looks at nothing else.</summary>
public sealed record PlanRequest(
    LocalDate From,
    int Weeks,
    string TimeZone,
    ImmutableArray<SessionSlot> Slots,
    ImmutableArray<KitCount> Kit,
    ImmutableArray<Fixture> Fixtures,
    ImmutableArray<AthleteRequest> Athletes,
    Catalogue Catalogue,
    ImmutableArray<LockedItem> Locks,
    SolveBudget Budget
);
