using System.Collections.Immutable;
using Jumpwright.Plans.Rules;

namespace Jumpwright.Plans;

/// <summary>The contents page of all hard limits of a plan.</summary>
public static class Limits
{
    /// <summary>Every limit, in the order a practitioner would ask.</summary>
    public static ImmutableArray<Limit> All { get; } =
    [
        new RulingsOfTheDay(),
        new OnTheMenu(),
        new ContactsPerSession(),
        new ContactsPerWeek(),
        new HighIntensityContacts(),
        new RecoveryHours(),
        new RecoveryFromRecentWork(),
        new HighIntensityRoundFixtures(),
        new TopTierRoundFixtures(),
        new SessionMinutes(),
        new ExercisesPerSessionAtMost(),
        new ExercisesPerSessionAtLeast(),
        new LowWorkFirst(),
        new OrderInSession(),
        new PairsTogether(),
        new KitMinutes(),
        new FreshKitMinutes(),
        new KitAtOnce(),
        new OnePlaceAtATime(),
        new RotationHoldsEveryItem(),
        new LocksKept(),
        new WishesKept(),
        new StatedObjective(),
    ];
}
