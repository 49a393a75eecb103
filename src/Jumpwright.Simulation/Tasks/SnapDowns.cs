using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Simulation.Chance;
using Jumpwright.Simulation.Motions;

namespace Jumpwright.Simulation.Tasks;

/// <summary>Solves snap-downs: from standing tall pulled down fast, the plate nearly unloaded, and caught in a held squat.</summary>
public static class SnapDowns
{
    private const double G = Gravity.MetresPerSecondSquared;

    /// <summary>Makes one; the landing depth is that of the held squat.</summary>
    /// <exception cref="InvalidOperationException">No motion with these settings keeps the feet on the ground.</exception>
    public static SimulatedMotion Make(JumperSettings settings, SeededRandom random)
    {
        Sway sway = Sway.Draw(random, settings.SwayN / settings.SystemMassKg, settings.SwayColour);
        return Attempts.Until(() => TryOnce(settings, random, sway), $"snap-down to {settings.LandingDepthM:0.00} m");
    }

    private static SimulatedMotion? TryOnce(JumperSettings settings, SeededRandom random, Sway sway)
    {
        MotionBuilder builder = new(settings.SystemMassKg, sway);
        builder.Stand(settings.StandBeforeS);
        double onset = builder.NowS;
        double fall = random.Uniform(0.15, 0.24);
        double speed = 0.8 * G * fall;
        double depth = settings.LandingDepthM;
        double caught = (depth - (0.4 * speed * fall)) / (0.5 * speed);
        double end = fall + Math.Max(caught, 0.12);
        BodyState rest = builder.StandingAt(onset + end, -depth);
        BodyState now = builder.Now;
        double mean = speed / (end - fall);
        bool solved = builder.Contact(
            [
                new(0, now.AccelerationMS2, 0, KnotSlope.Given, builder.Sway.JerkAt(onset)),
                new(0.35 * fall, -random.Uniform(0.85, 0.95) * G, 1),
                new(0.85 * fall, -random.Uniform(0.8, 0.92) * G, 1),
                new(fall + (0.25 * (end - fall)), mean * random.Uniform(1.5, 2.2), 1),
                new(fall + (0.6 * (end - fall)), mean * random.Uniform(0.8, 1.2), 1, KnotSlope.Through),
                new(end, rest.AccelerationMS2, 0, KnotSlope.Given, builder.Sway.JerkAt(onset + end)),
            ],
            [new Passage(5, rest.VelocityMS, rest.DisplacementM)]
        );
        if (!solved)
        {
            return null;
        }

        double solvedEnd = builder.NowS;
        builder.Stand(settings.StandAfterS, -depth);
        Motion motion = builder.Build();
        double touch = motion.LeastForce(onset, solvedEnd).TimeS;
        return new SimulatedMotion(
            JumpTask.SnapDown,
            settings.BodyMassKg,
            settings.ExternalLoadKg,
            motion,
            onset,
            null,
            [],
            touch
        );
    }
}
