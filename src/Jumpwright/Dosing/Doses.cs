using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Progression;
using Jumpwright.Quantities;
using Jumpwright.Safety;
using NodaTime;

namespace Jumpwright.Dosing;

/// <summary>The room's door: how an open exercise would be done by this athlete on this day.</summary>
public static class Doses
{
    /// <summary>The dose, or a sentence why there is none (no safe height, no load known, …).</summary>
    public static Outcome<Dose> For(
        Exercise exercise,
        Ladder ladder,
        Profile profile,
        History history,
        ImmutableArray<Ruling> rulings,
        Catalogue catalogue,
        LocalDate day
    ) => throw new NotImplementedException();
}
