using Jumpwright.Quantities;

namespace Jumpwright.Mechanics;

/// <summary>
/// Elastic bands. Colour is not force: makes of equal width differ, and tension–deformation is of second order (McMaster,
/// Cronin and McGuigan 2010, doi:10.1519/jsc.0b013e3181dc4200), so coefficients come from the user's own scale. A height under
/// a band is not g t² / 8.
/// </summary>
public static class Bands
{
    /// <summary>Tension, N: a x + b x², x the stretch beyond rest; a slack band pulls with zero.</summary>
    /// <param name="linearNM">a, N/m.</param>
    /// <param name="quadraticNM2">b, N/m².</param>
    /// <param name="restM">Length at rest, m.</param>
    /// <param name="stretchedM">Length now, m.</param>
    public static double TensionN(double linearNM, double quadraticNM2, double restM, double stretchedM)
    {
        double stretch = Math.Max(stretchedM - restM, 0);
        return (linearNM * stretch) + (quadraticNM2 * stretch * stretch);
    }

    /// <summary>Weight that is left under a band that pulls up, % of body weight.</summary>
    public static double WeightLeftPct(double massKg, double tensionN)
    {
        double weight = massKg * Gravity.MetresPerSecondSquared;
        return 100 * (weight - tensionN) / weight;
    }
}
