namespace Jumpwright.Trials;

/// <summary>How much of a standard normal distribution lies above a value, to a few parts in a hundred thousand of itself where it matters.</summary>
internal static class NormalTail
{
    private const double PerRootOfTwoPi = 0.398942280401432678;

    /// <summary>Abramowitz and Stegun 1964, 7.1.26 (absolute error 7.5e-8 of the tail).</summary>
    public static double Above(double z) => Above(z, out _);

    /// <summary>The same, with the density at the value.</summary>
    public static double Above(double z, out double density)
    {
        double x = Math.Abs(z) / Math.Sqrt(2);
        double t = 1 / (1 + (0.3275911 * x));
        double polynomial =
            t * (0.254829592 + (t * (-0.284496736 + (t * (1.421413741 + (t * (-1.453152027 + (t * 1.061405429))))))));
        double falling = Math.Exp(-x * x);
        density = falling * PerRootOfTwoPi;
        double above = polynomial * falling / 2;
        return z >= 0 ? above : 1 - above;
    }
}
