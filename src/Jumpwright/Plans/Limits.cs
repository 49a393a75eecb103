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
        new LoadCaps(
            "weekly-load",
            "Jump training and other jumping together stay within what a week may hold.",
            "house-rule",
            "week"
        ),
        new LoadCaps(
            "weekly-growth",
            "A tissue's demand of the first week grows by no more than the athlete's level allows.",
            "common-practice",
            "week"
        ),
        new LoadCaps(
            "tissue-load-after-symptom",
            "After a symptom the tissue is loaded no more than the plan before it did.",
            "house-rule",
            "session"
        ),
        new LoadCaps(
            "taper-before-fixture",
            "Sessions shortly before a fixture hold fewer contacts than others.",
            "common-practice",
            "session"
        ),
        new WeeklyGrowth(),
        new OpensInOrder(),
        new DropHeightRise(),
        new RecoveryHours(),
        new RecoveryFromRecentWork(),
        new HighIntensityRoundFixtures(),
        new TopTierRoundFixtures(),
        new RecoveryBeforeFixtures(),
        new SoreLandingsBeforeFixtures(),
        new SessionMinutes(),
        new ExercisesPerSessionAtMost(),
        new ExercisesPerSessionAtLeast(),
        new VariantsPerSession(),
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
