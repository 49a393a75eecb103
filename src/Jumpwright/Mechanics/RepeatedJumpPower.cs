using Jumpwright.Quantities;

namespace Jumpwright.Mechanics;

/// <summary>Mean power of repeated jumps.</summary>
public static class RepeatedJumpPower
{
    /// <summary>
    /// Mean power per body mass, W/kg: g² T_f T_t / (4 n (T_t − T_f)) (Bosco, Luhtanen and Komi 1983, Eur J Appl Physiol
    /// 50:273–282; equation from memory).
    /// </summary>
    /// <param name="totalFlightS">Sum of all flights, s.</param>
    /// <param name="totalS">Duration of the series, s.</param>
    /// <param name="jumps">How many jumps.</param>
    public static double BoscoWKg(double totalFlightS, double totalS, int jumps)
    {
        const double g = Gravity.MetresPerSecondSquared;
        return g * g * totalFlightS * totalS / (4 * jumps * (totalS - totalFlightS));
    }
}
