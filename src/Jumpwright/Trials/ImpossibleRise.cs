namespace Jumpwright.Trials;

/// <summary>
/// Whoever jumps out of a stand leaves the plate on the toes: a hand's breadth higher than standing, arms or no arms. A weight of a
/// stand that a hand on a rail relieved lifts the whole motion instead, and the take-off with it.
/// </summary>
internal static class ImpossibleRise
{
    /// <summary>Above standing height nobody leaves the plate higher, m (house rule: heels and arms lift by some 0.1 to 0.2 m).</summary>
    private const double HighestM = 0.30;

    /// <summary>Nor below it by more: legs that push no farther, m (house rule).</summary>
    private const double LowestM = -0.20;

    /// <summary>A squat is held so much lower at most, m (house rule).</summary>
    private const double DeepestSquatM = 0.80;

    private const double Uncertainties = 3;

    /// <summary>Looks at how high a take-off lies above the stand before it.</summary>
    public static void Check(MeasureList into, FittedMotion motion, Instant takeOff, bool fromSquat)
    {
        double rise = motion.PositionAt(takeOff.Sample);
        double beyond = Math.Max(rise - (fromSquat ? DeepestSquatM : HighestM), LowestM - rise);
        if (beyond > 0 && beyond > Uncertainties * motion.PositionUncertaintyAt(takeOff.Sample))
        {
            into.Doubt(Cautions.ImpossibleRise(motion.WeightN, rise), UnlikeStands.MadeOfWeight);
        }
    }
}
