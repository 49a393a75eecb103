using System.Collections.Immutable;
using Jumpwright.Mechanics;

namespace Jumpwright.Trials;

/// <summary>
/// Which hops of a series count: the first left out, contact below 0.25 s (fast stretch–shortening, Schmidtbleicher 1992, from
/// memory), the five with the highest index (ten hops, best five: Harper, Hobbs and Moore 2011).
/// </summary>
internal static class Hops
{
    public const double LongestContactS = 0.25;
    public const int Best = 5;

    /// <summary>Indices of the hops that count, best first.</summary>
    public static ImmutableArray<int> Counted(IReadOnlyList<HopContact> hops) =>
        [
            .. Enumerable
                .Range(0, hops.Count)
                .Skip(1)
                .Where(i => hops[i].ContactS < LongestContactS)
                .OrderByDescending(i => hops[i].ReactiveStrengthIndex)
                .Take(Best),
        ];

    public static HopContact Of(double contactS, double flightS) =>
        new(contactS, flightS, ReactiveStrength.Index(Flight.HeightFromTimeM(flightS), contactS));
}
