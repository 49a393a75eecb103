using Jumpwright.Quantities;
using Jumpwright.Simulation.Chance;
using Jumpwright.Simulation.Motions;

namespace Jumpwright.Simulation.Tasks;

/// <summary>Solves rebounds: contacts from the air into the air in a given time.</summary>
internal static class Rebounds
{
    private const double G = Gravity.MetresPerSecondSquared;

    /// <summary>Adds one contact; false when these numbers allow none.</summary>
    /// <param name="contactS">Contact time, s.</param>
    /// <param name="takeOffVelocityMS">Velocity at its end, m/s.</param>
    /// <param name="riseM">Displacement at its end, m.</param>
    /// <param name="bimodal">An impact peak before the push.</param>
    public static bool Add(
        MotionBuilder builder,
        SeededRandom random,
        double contactS,
        double takeOffVelocityMS,
        double riseM,
        bool bimodal
    )
    {
        double mean = ((takeOffVelocityMS - builder.Now.VelocityMS) / contactS) + G;
        double peak = mean * random.Uniform(1.45, 1.65);
        double skew = random.Uniform(-0.05, 0.05);
        double start = random.Uniform(0.9, 1.8);
        double finish = random.Uniform(0.9, 1.8);
        Knot[] knots;
        if (bimodal)
        {
            double impact = random.Uniform(0.1, 0.2);
            knots =
            [
                new(0, -G, 0, KnotSlope.Chord, start),
                new(impact * contactS, (peak * random.Uniform(0.85, 1.5)) - G, 1),
                new((impact + random.Uniform(0.1, 0.16)) * contactS, (peak * random.Uniform(0.45, 0.75)) - G, 1),
                new((0.53 + skew) * contactS, (peak * 0.98) - G, 1),
                new((0.77 + (skew / 2)) * contactS, (0.62 * peak) - G, 1, KnotSlope.Through),
                new(contactS, -G, 0, KnotSlope.Chord, finish),
            ];
        }
        else
        {
            knots =
            [
                new(0, -G, 0, KnotSlope.Chord, start),
                new((0.24 + (skew / 2)) * contactS, (0.72 * peak) - G, 1, KnotSlope.Through),
                new((0.48 + skew) * contactS, peak - G, 1),
                new((0.75 + (skew / 2)) * contactS, (0.66 * peak) - G, 1, KnotSlope.Through),
                new(contactS, -G, 0, KnotSlope.Chord, finish),
            ];
        }

        return builder.Contact(knots, [new Passage(knots.Length - 1, takeOffVelocityMS, riseM)], Plausible.Rebound);
    }
}
