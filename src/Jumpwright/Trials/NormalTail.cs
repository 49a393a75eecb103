using System.Runtime.Intrinsics;

namespace Jumpwright.Trials;

/// <summary>How much of a standard normal distribution lies above a value, to a few parts in a hundred thousand of itself where it matters.</summary>
internal static class NormalTail
{
    private const double PerRootOfTwoPi = 0.398942280401432678;

    private const double LeastLog = -700;

    /// <summary>Abramowitz and Stegun 1964, 7.1.26 (absolute error 7.5e-8 of the tail).</summary>
    public static double Above(double z) => Above(Vector512.Create(z), out _)[0];

    /// <summary>The same of eight values, with the density at each.</summary>
    public static Vector512<double> Above(Vector512<double> z, out Vector512<double> density)
    {
        Vector512<double> one = Vector512<double>.One;
        Vector512<double> t = one / (one + (Vector512.Abs(z) * (0.3275911 / Math.Sqrt(2))));
        Vector512<double> polynomial = Vector512.Create(1.061405429);
        polynomial = (polynomial * t) + Vector512.Create(-1.453152027);
        polynomial = (polynomial * t) + Vector512.Create(1.421413741);
        polynomial = (polynomial * t) + Vector512.Create(-0.284496736);
        polynomial = ((polynomial * t) + Vector512.Create(0.254829592)) * t;
        // What falls farther is nothing, and a vector that holds it is reckoned number by number.
        Vector512<double> falling = Vector512.Exp(Vector512.Max(z * z * -0.5, Vector512.Create(LeastLog)));
        density = falling * PerRootOfTwoPi;
        Vector512<double> above = polynomial * falling / 2;
        return Vector512.ConditionalSelect(Vector512.GreaterThanOrEqual(z, Vector512<double>.Zero), above, one - above);
    }
}
