using Jumpwright.Quantities;

namespace Jumpwright.Mechanics;

/// <summary>
/// The line of mean force per body mass over mean velocity of a push-off, and the slope that would give the highest jump at the
/// same greatest power. Samozino et al. 2008, J Biomech 41:2940–2945, and 2012, Med Sci Sports Exerc 44:313–322 (equations from
/// memory; the closed form agrees with a direct search).
/// </summary>
/// <param name="ForceNKg">F0, N/kg: where the line meets zero velocity.</param>
/// <param name="VelocityMS">v0, m/s: where it meets zero force.</param>
public sealed record ForceVelocityLine(double ForceNKg, double VelocityMS)
{
    private const double G = Gravity.MetresPerSecondSquared;

    /// <summary>S, N·s/m/kg; negative.</summary>
    public double Slope => -ForceNKg / VelocityMS;

    /// <summary>Greatest power, W/kg: F0 v0 / 4.</summary>
    public double PowerWKg => ForceNKg * VelocityMS / 4;

    /// <summary>Take-off velocity, m/s, over that push-off distance.</summary>
    public double TakeOffMS(double pushOffM) => TakeOffMS(PowerWKg, Slope, pushOffM);

    /// <summary>
    /// Take-off velocity, m/s, of a greatest power and a slope: h (√(S²/4 + (2/h)(2 √(−P S) − g)) + S/2); 0 where the force can't
    /// lift the body.
    /// </summary>
    public static double TakeOffMS(double powerWKg, double slope, double pushOffM)
    {
        double inside = (slope * slope / 4) + (2 / pushOffM * ((2 * Math.Sqrt(-powerWKg * slope)) - G));
        return inside <= 0 ? 0 : Math.Max(0, pushOffM * (Math.Sqrt(inside) + (slope / 2)));
    }

    /// <summary>Slope of the highest jump by the closed form, N·s/m/kg. The cube root is the real one of a negative number.</summary>
    public static double OptimalSlope(double powerWKg, double pushOffM)
    {
        double p = powerWKg;
        double h = pushOffM;
        double root = Math.Sqrt(
            (2 * Math.Pow(G, 3) * Math.Pow(h, 9) * Math.Pow(p, 6)) + (27 * Math.Pow(h, 8) * Math.Pow(p, 8))
        );
        double z = Math.Cbrt(
            (-Math.Pow(G, 6) * Math.Pow(h, 6))
                - (18 * Math.Pow(G, 3) * Math.Pow(h, 5) * p * p)
                - (54 * Math.Pow(h, 4) * Math.Pow(p, 4))
                + (6 * Math.Sqrt(3) * root)
        );
        return (-G * G / (3 * p))
            - (((-Math.Pow(G, 4) * Math.Pow(h, 4)) - (12 * G * Math.Pow(h, 3) * p * p)) / (3 * h * h * p * z))
            + (z / (3 * h * h * p));
    }

    /// <summary>The same by direct search (golden section), as a check of the closed form.</summary>
    public static double OptimalSlopeBySearch(double powerWKg, double pushOffM)
    {
        double ratio = (Math.Sqrt(5) - 1) / 2;
        double low = -100;
        double high = -0.5;
        while (high - low > 1e-9)
        {
            double a = high - (ratio * (high - low));
            double b = low + (ratio * (high - low));
            if (TakeOffMS(powerWKg, a, pushOffM) > TakeOffMS(powerWKg, b, pushOffM))
            {
                high = b;
            }
            else
            {
                low = a;
            }
        }

        return (low + high) / 2;
    }
}
