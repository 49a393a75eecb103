using Jumpwright.Quantities;

namespace Jumpwright.Mechanics;

/// <summary>Impulse and momentum of the centre of mass (Linthorne 2001, doi:10.1119/1.1397460; literature notes 1 and 2).</summary>
public static class Impulse
{
    private const double G = Gravity.MetresPerSecondSquared;

    /// <summary>Impulse of a uniformly sampled force by the trapezoid rule, N·s.</summary>
    /// <param name="forceN">Force, N.</param>
    /// <param name="rateHz">Sampling rate, Hz.</param>
    public static double OfNs(ReadOnlySpan<double> forceN, double rateHz)
    {
        if (forceN.Length < 2)
        {
            return 0;
        }

        double sum = (forceN[0] + forceN[^1]) / 2;
        for (int i = 1; i < forceN.Length - 1; i++)
        {
            sum += forceN[i];
        }

        return sum / rateHz;
    }

    /// <summary>Velocity gained, m/s, by a net impulse: ∫(F − W) dt / m.</summary>
    /// <param name="grossImpulseNs">Impulse of the whole force, N·s.</param>
    /// <param name="durationS">Its duration, s.</param>
    /// <param name="massKg">Mass, kg.</param>
    public static double VelocityGainMS(double grossImpulseNs, double durationS, double massKg) =>
        (grossImpulseNs / massKg) - (G * durationS);

    /// <summary>Velocity, m/s, that a half-sine net force of that amplitude gives: 2 A T / (π m).</summary>
    public static double HalfSineVelocityMS(double amplitudeN, double durationS, double massKg) =>
        2 * amplitudeN * durationS / (Math.PI * massKg);

    /// <summary>Touch-down speed, m/s, of a drop jump from the net impulse of the contact: J / m − v at take-off.</summary>
    /// <param name="netImpulseNs">Net impulse of the contact, N·s.</param>
    /// <param name="massKg">Mass, kg.</param>
    /// <param name="takeOffMS">Velocity at take-off, m/s.</param>
    public static double TouchDownSpeedMS(double netImpulseNs, double massKg, double takeOffMS) =>
        (netImpulseNs / massKg) - takeOffMS;

    /// <summary>
    /// Take-off velocity, m/s, that a wrong weight makes out of a right one: (m v + W T − Ŵ T) / m̂.
    /// </summary>
    /// <param name="massKg">True mass, kg.</param>
    /// <param name="takeOffMS">True velocity, m/s.</param>
    /// <param name="onsetToTakeOffS">Time over which the force was integrated, s.</param>
    /// <param name="relativeWeightError">Weight used over true weight, less one.</param>
    public static double VelocityWithWrongWeightMS(
        double massKg,
        double takeOffMS,
        double onsetToTakeOffS,
        double relativeWeightError
    )
    {
        double weight = massKg * G;
        double used = weight * (1 + relativeWeightError);
        return ((massKg * takeOffMS) + (weight * onsetToTakeOffS) - (used * onsetToTakeOffS)) / (used / G);
    }

    /// <summary>
    /// Momentum at take-off, kg·m/s (McMahon, Lake, Ripley and Comfort 2020, J Appl Biomech 36:370–374).
    /// </summary>
    public static double MomentumKgMS(double massKg, double takeOffMS) => massKg * takeOffMS;
}
