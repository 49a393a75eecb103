using System.Collections.Immutable;

namespace Jumpwright.Planning.Searching;

/// <summary>
/// Prices of kit while plans are sought on the floors: dearer after every turn in which hardly any of a kit was left in a session,
/// cheaper after one in which much was. They begin as the prices of the relaxation, which knows neither whole sets nor that a floor can be full of
/// gaps too short for anybody. Thousandths of a point for a second; no proof rests on them.
/// </summary>
internal sealed class CrowdedPrices(ImmutableArray<long> most, IEnumerable<long> first)
{
    /// <summary>Shares of a kit's seconds: with less left than the first it grows dearer, with more left than the second cheaper.</summary>
    private const double HardlyAny = 0.03;

    private const double Much = 0.08;

    private const double Dearer = 1.15;
    private const double Cheaper = 0.9;

    /// <summary>Added with every step up, so that a price can leave 0.</summary>
    private const double AtLeast = 0.5;

    /// <summary>A point for a second: more than anything is worth, so that what must stay drives no price beyond all numbers.</summary>
    private const double Highest = Scope.PointScale;

    /// <summary>How much faster than its turn a kit may go among those who come one after the other before its price shows it.</summary>
    private const double Pace = 4;

    private readonly double[] _prices = [.. first.Select(p => (double)p)];

    /// <summary>Whole thousandths, by the squad's kit index.</summary>
    public long[] Now => [.. _prices.Select(p => (long)p)];

    /// <summary>After a turn at these prices.</summary>
    /// <param name="left">Seconds that nobody uses, by the squad's kit index.</param>
    public void After(long[] left)
    {
        for (int k = 0; k < left.Length; k++)
        {
            if (left[k] < HardlyAny * most[k])
            {
                _prices[k] = Math.Min(Highest, (_prices[k] * Dearer) + AtLeast);
            }
            else if (left[k] > Much * most[k])
            {
                _prices[k] *= Cheaper;
            }
        }
    }

    /// <summary>
    /// Prices for the next of some who come one after the other: where more of a kit is gone than their share of the line it is dearer, so
    /// that it is not all gone before the last.
    /// </summary>
    /// <param name="prices">The prices if all goes evenly.</param>
    /// <param name="whole">What there was for all of them.</param>
    /// <param name="left">What is left of it.</param>
    /// <param name="served">The share of them who were served.</param>
    public static long[] InLine(long[] prices, long[] whole, long[] left, double served) =>
        [
            .. prices.Select(
                (p, k) =>
                    whole[k] == 0
                        ? p
                        : (long)Math.Round(p * Math.Exp(Pace * (1 - ((double)left[k] / whole[k]) - served)))
            ),
        ];
}
