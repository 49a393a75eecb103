using Jumpwright.Quantities;

namespace Jumpwright.Trials;

/// <summary>A contact between a fall and a flight, from its motion: braking from touch-down to the lowest point, then propulsion.</summary>
/// <param name="TouchDown">First contact.</param>
/// <param name="Bottom">Lowest point (velocity zero).</param>
/// <param name="TakeOff">Last contact.</param>
/// <param name="FallM">Greatest fall of the centre of mass during contact, m.</param>
/// <param name="PeakForceN">Greatest force, N.</param>
internal sealed record Rebound(Instant TouchDown, Instant Bottom, Instant TakeOff, double FallM, double PeakForceN)
{
    /// <summary>Null where the contact does not turn a fall into a rise.</summary>
    public static Rebound? Of(Plate plate, FittedMotion motion, Contact contact)
    {
        if (contact is not { TouchDown: { } touchDown, TakeOff: { } takeOff })
        {
            return null;
        }

        int offset = motion.Samples.From;
        int from = (int)Math.Ceiling(touchDown.Sample);
        int to = Math.Min((int)takeOff.Sample, motion.Samples.To - 1);
        ReadOnlySpan<double> v = motion.VelocityMS;
        // The last sample before take-off may lie just after it; the way back to the lowest point begins one earlier.
        to = Math.Max(Math.Min(to, motion.Samples.To - 2), from);
        int bottom = to;
        while (bottom > from && v[bottom - offset] > 0)
        {
            bottom--;
        }

        if (bottom == to || bottom <= from)
        {
            return null;
        }

        double rise = v[bottom + 1 - offset] - v[bottom - offset];
        double at = bottom + (rise > 0 ? Math.Clamp(-v[bottom - offset] / rise, 0, 1) : 0);
        double acceleration = Math.Max((plate.ForceN[bottom] / motion.MassKg) - Gravity.MetresPerSecondSquared, 2);
        double u = Math.Min(motion.VelocityUncertaintyAt(at) / acceleration, 0.03);

        double start = motion.PositionAt(touchDown.Sample);
        double lowest = motion.PositionAt(at);
        double peak = 0;
        for (int i = from; i <= to; i++)
        {
            lowest = Math.Min(lowest, motion.PositionM[i - offset]);
            peak = Math.Max(peak, plate.ForceN[i]);
        }

        return new Rebound(touchDown, new Instant(at, u), takeOff, start - lowest, peak);
    }

    /// <summary>Peak force over greatest fall, N/m, with its standard uncertainty.</summary>
    public (double Value, double Uncertainty) Stiffness(Plate plate, FittedMotion motion)
    {
        double k = PeakForceN / FallM;
        double seconds = plate.Seconds(TouchDown.Sample, Bottom.Sample);
        double fallU =
            seconds
            * PushMeasures.Quadrature(
                motion.VelocityUncertaintyAt(TouchDown.Sample),
                motion.VelocityAt(TouchDown.Sample) * TouchDown.UncertaintyS / Math.Max(seconds, 0.01)
            );
        double forceU = PushMeasures.Quadrature(1.5 * plate.Levels.NoiseN, 0.002 * PeakForceN);
        return (k, k * PushMeasures.Quadrature(fallU / FallM, forceU / PeakForceN));
    }
}
