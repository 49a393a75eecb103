using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Dosing;
using Jumpwright.Exercises;
using Jumpwright.Quantities;
using Jumpwright.Safety;
using NodaTime;

namespace Jumpwright.Plans;

/// <summary>What the planner may give one athlete.</summary>
public sealed record AthleteRequest(
    Athlete Athlete,
    int ContactsPerSessionAtMost,
    int ContactsPerWeekAtMost,
    int ExercisesPerSessionAtMost,
    ImmutableArray<MenuItem> Menu,
    ImmutableArray<RecentWork> Recent,
    ImmutableDictionary<LocalDate, ImmutableArray<Ruling>> RulingsByDay,
    ImmutableArray<Unmet> Unmet
);
