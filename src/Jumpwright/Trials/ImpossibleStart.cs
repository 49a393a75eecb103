namespace Jumpwright.Trials;

/// <summary>
/// A stand after the jump that shows but a part of the weight (a foot beside the plate, a hand on a rail) makes the time before it a
/// long push off: reckoned back from there, the athlete would have come at a speed that nobody has.
/// </summary>
internal static class ImpossibleStart
{
    /// <summary>Who is on the plate when the recording begins moves no faster, m/s (house rule).</summary>
    private const double MostOnPlateMS = 2;

    /// <summary>Who comes from off the plate falls no faster than from 1.5 m, m/s (house rule).</summary>
    private const double MostFallMS = 5.5;

    /// <summary>Looks at how one contact begins.</summary>
    public static void Check(MeasureList into, FittedMotion motion, Contact contact)
    {
        double v = motion.VelocityAt(contact.TouchDown?.Sample ?? contact.Samples.From);
        double down = contact.TouchDown is null ? MostOnPlateMS : MostFallMS;
        if (v < -down || v > MostOnPlateMS)
        {
            into.Doubt(Cautions.ImpossibleStart(motion.WeightN, Math.Abs(v)), UnlikeStands.MadeOfWeight);
        }
    }
}
