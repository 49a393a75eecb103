using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
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
)
{
    /// <summary>What a coach asked for by name.</summary>
    public ImmutableArray<Wish> Wishes { get; init; } = [];

    /// <summary>Limits that hold for the whole squad.</summary>
    public SquadLimits Limits { get; init; } = new();

    /// <summary>Limits that somebody overrode.</summary>
    public ImmutableArray<Override> Overrides { get; init; } = [];

    /// <summary>Monday of the week of that day: the week in which contacts and goals are counted.</summary>
    public static LocalDate WeekOf(LocalDate day) => day.PlusDays(1 - (int)day.DayOfWeek);
}
