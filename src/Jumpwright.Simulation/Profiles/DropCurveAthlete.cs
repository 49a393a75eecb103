using Jumpwright.Calculators.Curves;
using Jumpwright.Simulation.Chance;

namespace Jumpwright.Simulation.Profiles;

/// <summary>
/// A simulated athlete whose index over drop height is known. Half of the curves are lopsided, so that not every one is of the
/// family that is fitted.
/// </summary>
/// <param name="Top">Index at the peak, m/s.</param>
/// <param name="PeakM">Height of the peak, m.</param>
/// <param name="BendBelow">Bend below the peak, per m².</param>
/// <param name="BendAbove">Bend above it.</param>
/// <param name="NoiseShare">Trial-to-trial SD, of the index.</param>
/// <param name="LimitM">The highest drop allowed, m.</param>
public sealed record DropCurveAthlete(
    double Top,
    double PeakM,
    double BendBelow,
    double BendAbove,
    double NoiseShare,
    double LimitM
)
{
    public static DropCurveAthlete Draw(SeededRandom random)
    {
        double bend = random.Uniform(0.75, 3.75);
        return new DropCurveAthlete(
            random.Uniform(0.9, 2.4),
            random.Uniform(0.25, 0.65),
            bend,
            random.Chance(0.5) ? bend : bend * random.Uniform(0.4, 1.6),
            random.Uniform(0.05, 0.11),
            random.OneOf(0.3, 0.4, 0.5, 0.6, 0.75)
        );
    }

    public double IndexAt(double dropM)
    {
        double x = dropM - PeakM;
        return Top * Math.Exp(-(x < 0 ? BendBelow : BendAbove) * x * x);
    }

    /// <summary>Best index at heights that limits allow, and that were within a step of what was jumped.</summary>
    public double BestUpTo(double dropM) => IndexAt(Math.Clamp(PeakM, 0.10, dropM));

    public DropJumpTrial Jump(double dropM, SeededRandom random) =>
        new(
            dropM,
            Math.Max(0.06, IndexAt(dropM) * (1 + (NoiseShare * random.Normal()))),
            Math.Clamp(0.18 + (0.04 * dropM) + (0.006 * random.Normal()), 0.1, 0.9)
        );
}
