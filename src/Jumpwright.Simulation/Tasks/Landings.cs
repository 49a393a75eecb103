using Jumpwright.Quantities;
using Jumpwright.Simulation.Chance;
using Jumpwright.Simulation.Motions;

namespace Jumpwright.Simulation.Tasks;

/// <summary>Solves landings: from touch-down to the lowest point, and up to standing (or to a held squat).</summary>
internal static class Landings
{
    private const double G = Gravity.MetresPerSecondSquared;

    /// <summary>Lands from the builder's state in the air and comes to rest.</summary>
    /// <param name="depthM">Lowest point below quiet standing, m.</param>
    /// <param name="restM">Level at which it ends, m: 0 standing, negative a held squat.</param>
    public static bool Add(MotionBuilder builder, SeededRandom random, double depthM, double restM = 0)
    {
        double fall = -builder.Now.VelocityMS;
        double way = builder.Now.DisplacementM + depthM;
        double down = way / (random.Uniform(0.42, 0.58) * fall);
        double mean = fall / down;
        double impactAt = Math.Min(random.Uniform(0.035, 0.075), 0.3 * down);
        double valleyAt = Math.Min(impactAt + random.Uniform(0.05, 0.09), 0.62 * down);
        double climb = depthM + restM;
        double up = random.Uniform(0.55, 0.95) * Math.Max(0.75, Math.Sqrt(Math.Max(0.02, climb) / 0.25));
        double lift = 5 * climb / (up * up);
        double end = down + up;
        BodyState rest = builder.StandingAt(builder.NowS + end, restM);
        Knot[] knots =
        [
            new(0, -G, 0, KnotSlope.Chord, random.Uniform(0.9, 2)),
            new(impactAt, mean * random.Uniform(1.6, 2.8), 1),
            new(valleyAt, mean * random.Uniform(0.8, 1.3), 1, random.Chance(0.5) ? KnotSlope.Flat : KnotSlope.Through),
            new(down, (lift * 0.7) + (mean * random.Uniform(0.1, 0.35)), 0.7, KnotSlope.Through),
            new(down + (0.25 * up), lift * random.Uniform(0.5, 0.9), 0.5, KnotSlope.Through),
            new(down + (0.65 * up), -lift * random.Uniform(0.5, 0.9), 0.5),
            new(end, rest.AccelerationMS2, 0, KnotSlope.Given, builder.Sway.JerkAt(builder.NowS + end)),
        ];
        return builder.Contact(
            knots,
            [new Passage(3, 0, -depthM), new Passage(6, rest.VelocityMS, rest.DisplacementM)]
        );
    }
}
