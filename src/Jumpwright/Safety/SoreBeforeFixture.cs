using System.Collections.Immutable;
using Jumpwright.Quantities;
using NodaTime;

namespace Jumpwright.Safety;

/// <summary>
/// Shortly before a fixture no landing on the floor loads a tissue that is sore. How a sore tissue takes its work shows the next
/// morning (Silbernagel 2007); on the eve that morning is the fixture's. Which work is left out and for how many days is
/// <c>common practice</c>. A tissue is sore while a rule of pain holds it back.
/// </summary>
public static class SoreBeforeFixture
{
    /// <summary>The limit that says on how many days before a fixture; its own day always.</summary>
    public const string LimitId = "sore-landing-days-before-fixture";

    /// <summary>The sore tissue that a landing of this work would load so near to a fixture; null where nothing stands against it.</summary>
    /// <param name="facts">The work.</param>
    /// <param name="rulings">Rulings of the day on which it would be done.</param>
    /// <param name="day">That day.</param>
    /// <param name="fixture">Day of the fixture.</param>
    /// <param name="daysBefore">Days before the fixture that count, its own not among them.</param>
    public static Tissue? Loaded(
        ExerciseFacts facts,
        ImmutableArray<Ruling> rulings,
        LocalDate day,
        LocalDate fixture,
        int daysBefore
    )
    {
        ArgumentNullException.ThrowIfNull(facts);
        if (!facts.LandsOnFloor || !IsNear(day, fixture, daysBefore))
        {
            return null;
        }

        foreach (Ruling ruling in rulings)
        {
            if (ruling.Effect is TierAtMost { Tissue: var sore } && facts.TierByTissue.GetValueOrDefault(sore, 3) > 0)
            {
                return sore;
            }
        }

        return null;
    }

    /// <summary>True on the fixture's day and on so many days before it.</summary>
    public static bool IsNear(LocalDate day, LocalDate fixture, int daysBefore) =>
        day <= fixture && day >= fixture.PlusDays(-daysBefore);

    /// <summary>Why it is not done.</summary>
    public static Sentence Because(Tissue sore, string fixture, LocalDate date) =>
        $"The {TissueWords.Of(sore)} may be sore, and {fixture} is on {date:uuuu-MM-dd}: no landing on the floor so near to it, since how a sore tissue takes work shows the next morning.";
}
