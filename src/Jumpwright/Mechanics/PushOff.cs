using Jumpwright.Quantities;

namespace Jumpwright.Mechanics;

/// <summary>
/// Means of a push-off from height and push-off distance (Samozino et al. 2008, J Biomech 41:2940–2945; equations from
/// memory). Disputed: the profile built on them is specific to the task and noisy (Lindberg et al. 2021,
/// doi:10.1111/sms.14044; reply: Samozino et al. 2022); it describes and never decides alone.
/// </summary>
public static class PushOff
{
    private const double G = Gravity.MetresPerSecondSquared;

    /// <summary>Mean force, N: m g (h / h_PO + 1). With a load, the mass of the whole system.</summary>
    public static double MeanForceN(double massKg, double heightM, double pushOffM) =>
        massKg * G * ((heightM / pushOffM) + 1);

    /// <summary>Mean velocity, m/s: √(g h / 2).</summary>
    public static double MeanVelocityMS(double heightM) => Math.Sqrt(G * heightM / 2);

    /// <summary>Mean power, W.</summary>
    public static double MeanPowerW(double massKg, double heightM, double pushOffM) =>
        MeanForceN(massKg, heightM, pushOffM) * MeanVelocityMS(heightM);
}
