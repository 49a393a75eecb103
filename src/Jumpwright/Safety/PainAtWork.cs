using System.Collections.Immutable;

namespace Jumpwright.Safety;

/// <summary>
/// How much pain during work is worked through under the day's rulings. A bone has no acceptable number (<c>common practice</c>, as
/// the rule of bone pain says), so nobody with pain that may be of a bone goes on at 1 or 2. Above 2 of 10 a joint or muscle is left nothing, so nothing
/// stands instead for it either.
/// </summary>
public static class PainAtWork
{
    /// <summary>True where any pain, whatever its number, stops everything.</summary>
    public static bool StopsAtAny(ImmutableArray<Ruling> rulings) => rulings.Any(r => r.LimitId == "bone-pain");

    /// <summary>True where middling pain leaves no easier exercise.</summary>
    public static bool LeavesNothingInstead(ImmutableArray<Ruling> rulings) =>
        rulings.Any(r => r.LimitId is "bone-pain" or "joint-pain");

    /// <summary>Pain during work above which an exercise or a test is stopped, of 10.</summary>
    /// <param name="rulings">Of the day.</param>
    /// <param name="limits">The limits in force.</param>
    internal static double StopAbove(ImmutableArray<Ruling> rulings, LimitBook limits) =>
        StopsAtAny(rulings) ? 0 : limits["stop-pain-during"];
}
