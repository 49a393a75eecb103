using Jumpwright.Quantities;

namespace Jumpwright.Mechanics;

/// <summary>
/// Free flight of the centre of mass. Source: Linthorne 2001, Am J Phys 69:1198–1204, doi:10.1119/1.1397460 (flight-time and
/// take-off-velocity methods).
/// </summary>
public static class Flight
{
    private const double G = Gravity.MetresPerSecondSquared;

    /// <summary>Height from flight time, m: g t² / 8. Holds only for equal postures at take-off and touch-down.</summary>
    /// <param name="flightS">Flight time, s.</param>
    public static double HeightFromTimeM(double flightS) => G * flightS * flightS / 8;

    /// <summary>Height from take-off velocity, m: v² / 2g, the rise of the centre of mass after take-off.</summary>
    /// <param name="takeOffMS">Velocity at take-off, m/s, up positive.</param>
    public static double HeightFromVelocityM(double takeOffMS) => takeOffMS * takeOffMS / (2 * G);

    /// <summary>Speed after a free fall, m/s: √(2 g H).</summary>
    /// <param name="dropM">Height fallen, m.</param>
    public static double TouchDownSpeedMS(double dropM) => Math.Sqrt(2 * G * dropM);

    /// <summary>Flight time, s, of a jump that lands with the centre of mass lower than it took off.</summary>
    /// <param name="takeOffMS">Velocity at take-off, m/s, up positive.</param>
    /// <param name="lowerAtLandingM">How much lower the centre of mass is at touch-down, m.</param>
    public static double TimeS(double takeOffMS, double lowerAtLandingM) =>
        (takeOffMS + Math.Sqrt((takeOffMS * takeOffMS) + (2 * G * lowerAtLandingM))) / G;

    /// <summary>What one step of the clock is worth in flight-time height, m: (g t / 4) dt.</summary>
    /// <param name="flightS">Flight time, s.</param>
    /// <param name="stepS">Step of the clock, s, such as one frame.</param>
    public static double HeightResolutionM(double flightS, double stepS) => G * flightS / 4 * stepS;
}
