using System.Collections.Immutable;
using Jumpwright.Exercises;
using Jumpwright.Quantities;
using Jumpwright.Safety;

namespace Jumpwright.Plans.Asking;

/// <summary>What a reader would ask of an entry that stands where others are closed: what it asks of a tissue that pain holds back, and why a match is not too near. It opens nothing.</summary>
internal static class StaysOpen
{
    /// <summary>Of a tissue that a rule of pain holds back: which tier is left, which the exercise asks, and how that was got.</summary>
    internal static IEnumerable<Sentence> BesidePain(Exercise exercise, ImmutableArray<Ruling> rulings) =>
        from ruling in rulings
        let left = ruling.Effect as TierAtMost
        where left is not null && exercise.Demand.GetValueOrDefault(left.Tissue) > 0
        group left.Tier by left.Tissue into tissue
        select Sentence.Of(
            $"Pain leaves tier {tissue.Min()} of the {TissueWords.Of(tissue.Key)}, and this asks tier {exercise.Demand.GetValueOrDefault(tissue.Key)} of it. {exercise.DemandBasisSaid}"
        );

    /// <summary>On a fixture's day and on the days before it that are kept free of high intensity.</summary>
    internal static IEnumerable<Sentence> NearFixtures(
        Exercise exercise,
        SessionSlot slot,
        IEnumerable<FixtureWindow> fixtures,
        SquadLimits limits
    ) =>
        fixtures
            .Where(f => FixtureWindow.IsQuietDay(f.Fixture, slot.Date, limits))
            .Select(f =>
                exercise.MostRecoveryHours == 0
                    ? Sentence.Of(
                        $"Not too near {f.Fixture.Name} on {f.Fixture.Date:uuuu-MM-dd} by the rules of the plan: it is no high-intensity work and asks for no hours of recovery."
                    )
                    : Sentence.Of(
                        $"Not too near {f.Fixture.Name} on {f.Fixture.Date:uuuu-MM-dd} by the rules of the plan: it is no high-intensity work, and the {exercise.MostRecoveryHours} h of recovery it asks for are over by then."
                    )
            );
}
