using Jumpwright.App.Desk;
using Jumpwright.Quantities;
using Jumpwright.Safety;

namespace Jumpwright.App.Wording;

/// <summary>One sentence for one athlete.</summary>
internal static class Sentences
{
    /// <summary>What stands first: the ruling that guards them most closely today; then what limits them and how sure that is.</summary>
    public static Sentence Of(AthleteLeaf leaf) =>
        Guarding(leaf) switch
        {
            { Effect: NothingPlanned } closed => $"Nothing planned. {closed.Because}",
            { } guards => $"{guards.Because} {leaf.Profile.Summary}",
            null => leaf.Profile.Summary,
        };

    /// <summary>The ruling of pain or of a licensed person that closes most; null where none does.</summary>
    public static Ruling? Guarding(AthleteLeaf leaf) =>
        leaf.Rulings.Where(r => Weight(r.Effect) < int.MaxValue).MinBy(r => Weight(r.Effect));

    private static int Weight(RulingEffect effect) =>
        effect switch
        {
            NothingPlanned => 0,
            OnlyExercises => 1,
            TierAtMost { Tier: < 2 } low => 2 + low.Tier,
            NotExercises => 4,
            NoAnkleSprings => 5,
            _ => int.MaxValue,
        };
}
