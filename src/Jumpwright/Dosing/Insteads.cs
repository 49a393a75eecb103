using System.Collections.Immutable;
using Jumpwright.Exercises;
using Jumpwright.Progression;
using Jumpwright.Quantities;
using Jumpwright.Safety;

namespace Jumpwright.Dosing;

/// <summary>
/// What to do instead when it is sore: an exercise that is open to the athlete today, the kit for it at hand, and that asks less of the sore tissue (or of the one that
/// is asked most) and no more of any other, by tier and by load (contacts × tier of the same sets and reps). A card doesn't know where it
/// will hurt, so what it names is low work on every tissue, as the rules of pain ask, and no hop or run-up where the Achilles is asked at all.
/// An easier step of the same exercise first, then one that trains the same.
/// </summary>
internal static class Insteads
{
    /// <summary>The highest tier that pain of 3 to 5 leaves open (<see cref="Safety.Rules.TendonPain"/>).</summary>
    private const int LowWork = 1;

    private static readonly ImmutableArray<RulingEffect> OnASoreAchilles = [new NoAnkleSprings(), new NoRunUps()];

    /// <summary>
    /// What may be done instead, the best first; shortly before a fixture nothing that lands on the floor (<see cref="SoreBeforeFixture"/>), and nothing
    /// at all where the rules of pain leave nothing (<see cref="PainAtWork"/>).
    /// </summary>
    internal static IEnumerable<Exercise> For(Exercise exercise, OpenWork today, bool onFloor = true)
    {
        if (PainAtWork.LeavesNothingInstead(today.Rulings))
        {
            return [];
        }

        Tissue sore = Sore(exercise, today.Rulings);
        int asked = exercise.Demand.GetValueOrDefault(sore);
        if (asked == 0)
        {
            return [];
        }

        HashSet<string> kit = [.. exercise.Kit.Select(k => k.Id)];
        return today
            .Catalogue.Exercises.Where(e =>
                e.Id != exercise.Id
                && e.Demand.GetValueOrDefault(sore) < asked
                && Enum.GetValues<Tissue>()
                    .All(t =>
                        e.Demand.GetValueOrDefault(t) <= Math.Min(exercise.Demand.GetValueOrDefault(t), LowWork)
                        && LoadOfOneRep(e, t) <= LoadOfOneRep(exercise, t)
                    )
                && (e.ExternalLoad is null || exercise.ExternalLoad is not null)
                && (!e.SingleLegLanding || exercise.SingleLegLanding)
                && (onFloor || !e.Facts.LandsOnFloor)
                && (!e.IsDepthJump || exercise.IsDepthJump)
                && (e.DropRangeM is null || exercise.DropRangeM is { } d && e.DropRangeM.Value.MinM <= d.MinM)
                && (
                    exercise.Demand.GetValueOrDefault(Tissue.Achilles) == 0
                    || !OnASoreAchilles.Any(effect => effect.Forbids(e.Facts))
                )
                && today.Of(e).IsOpen
            )
            .OrderBy(e => exercise.Regressions.Contains(e.Id, StringComparer.Ordinal) ? 0 : 1)
            .ThenBy(e => e.Kit.All(k => kit.Contains(k.Id)) ? 0 : 1)
            .ThenBy(e => e.Trains.Intersect(exercise.Trains).Any() ? 0 : 1)
            .ThenByDescending(e => e.Stage)
            .ThenBy(e => e.Id, StringComparer.Ordinal);
    }

    /// <summary>Contacts × tier of one rep: a lower tier with twice the contacts, or on each leg in turn, would ask for more.</summary>
    private static int LoadOfOneRep(Exercise exercise, Tissue tissue) =>
        exercise.ContactsOfOneRep * exercise.Demand.GetValueOrDefault(tissue);

    /// <summary>The tissue that a ruling guards most closely, among those the exercise asks anything of; else the one asked most.</summary>
    private static Tissue Sore(Exercise exercise, ImmutableArray<Ruling> rulings)
    {
        TierAtMost? guarded = rulings
            .Select(r => r.Effect)
            .OfType<TierAtMost>()
            .Where(t => exercise.Demand.GetValueOrDefault(t.Tissue) > 0)
            .OrderBy(t => t.Tier)
            .ThenBy(t => t.Tissue)
            .FirstOrDefault();
        return guarded?.Tissue
            ?? Enum.GetValues<Tissue>()
                .OrderByDescending(t => exercise.Demand.GetValueOrDefault(t))
                .ThenBy(t => t)
                .First();
    }
}
