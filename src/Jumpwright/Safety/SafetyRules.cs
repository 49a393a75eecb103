using System.Collections.Immutable;
using Jumpwright.Athletes;
using NodaTime;

namespace Jumpwright.Safety;

/// <summary>The room's door: what is forbidden to an athlete on a day, and why. Unknown closes, never opens.</summary>
public static class SafetyRules
{
    /// <summary>All rulings in force on that day; an empty list means no rule of this room stands against anything.</summary>
    public static ImmutableArray<Ruling> For(History history, LocalDate day) => throw new NotImplementedException();
}
