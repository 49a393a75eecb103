using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Simulation.Chance;
using Jumpwright.Simulation.Motions;

namespace Jumpwright.Simulation.Tasks;

/// <summary>Solves squat jumps: lowered slowly, held, pushed, with or without an unwanted dip.</summary>
public static class SquatJumps
{
    private const double G = Gravity.MetresPerSecondSquared;

    /// <summary>Makes one.</summary>
    /// <exception cref="InvalidOperationException">No motion with these settings keeps the feet on the ground.</exception>
    public static SimulatedMotion Make(SquatJumpSettings settings, SeededRandom random)
    {
        Sway sway = Sway.Draw(random, settings.SwayN / settings.SystemMassKg, settings.SwayColour);
        return Attempts.Until(
            () => TryOnce(settings, random, sway),
            $"squat jump of {settings.TakeOffVelocityMS:0.00} m/s from {settings.DepthM:0.00} m"
        );
    }

    private static SimulatedMotion? TryOnce(SquatJumpSettings settings, SeededRandom random, Sway sway)
    {
        MotionBuilder builder = new(settings.SystemMassKg, sway);
        builder.Stand(settings.StandBeforeS);
        if (!Lower(builder, random, settings.DepthM))
        {
            return null;
        }

        builder.Stand(settings.HoldS, -settings.DepthM);
        double onset = builder.NowS;
        double start = builder.Now.DisplacementM;
        if (!Push(builder, random, settings, start))
        {
            return null;
        }

        double takeOff = builder.NowS;
        builder.FlyTo(settings.RiseAtTakeOffM - settings.LandingPostureDropM);
        double landing = builder.NowS;
        if (!Landings.Add(builder, random, settings.LandingDepthM))
        {
            return null;
        }

        builder.Stand(settings.StandAfterS);
        Motion motion = builder.Build();
        bool dips = settings.DipPct > 0;
        double propulsion = dips ? motion.Lowest(onset, takeOff).TimeS : onset;
        double dip = 100 * Math.Max(0, 1 - (motion.LeastForce(onset, propulsion + 1e-9).Value / motion.WeightN));
        return new SimulatedMotion(
            JumpTask.SquatJump,
            settings.BodyMassKg,
            settings.ExternalLoadKg,
            motion,
            onset,
            propulsion,
            [new ContactSpan(onset, takeOff)],
            landing,
            UnwantedDipPct: dips ? dip : 0
        );
    }

    private static bool Lower(MotionBuilder builder, SeededRandom random, double depthM)
    {
        double time = random.Uniform(1.1, 1.7);
        double end = builder.NowS + time;
        BodyState rest = builder.StandingAt(end, -depthM);
        double speed = 4.5 * depthM / (time * time);
        BodyState now = builder.Now;
        return builder.Contact(
            [
                new(0, now.AccelerationMS2, 0, KnotSlope.Given, builder.Sway.JerkAt(builder.NowS)),
                new(0.22 * time, -speed, 1),
                new(0.5 * time, 0, 1, KnotSlope.Through),
                new(0.78 * time, speed, 1),
                new(time, rest.AccelerationMS2, 0, KnotSlope.Given, builder.Sway.JerkAt(end)),
            ],
            [new Passage(4, rest.VelocityMS, rest.DisplacementM)]
        );
    }

    private static bool Push(MotionBuilder builder, SeededRandom random, SquatJumpSettings settings, double start)
    {
        double range = settings.RiseAtTakeOffM - start;
        double up = range / (random.Uniform(0.42, 0.52) * settings.TakeOffVelocityMS);
        double mean = settings.TakeOffVelocityMS / up;
        double dipTime = settings.DipPct > 0 ? random.Uniform(0.10, 0.18) : 0;
        BodyState now = builder.Now;
        Knot first = new(0, now.AccelerationMS2, 0, KnotSlope.Given, builder.Sway.JerkAt(builder.NowS));
        Knot[] rise =
        [
            new((2 * dipTime) + (0.25 * up), mean * random.Uniform(0.8, 1.1), 1, KnotSlope.Through),
            new((2 * dipTime) + (0.55 * up), mean * random.Uniform(1.1, 1.4), 1, KnotSlope.Through),
            new((2 * dipTime) + (0.80 * up), mean * random.Uniform(1.2, 1.5), 1),
            new((2 * dipTime) + up, -G, 0, KnotSlope.Chord, random.Uniform(0.9, 2.0)),
        ];
        Knot[] knots = dipTime > 0 ? [first, new(dipTime, -settings.DipPct / 100 * G, 0), .. rise] : [first, .. rise];
        return builder.Contact(
            knots,
            [new Passage(knots.Length - 1, settings.TakeOffVelocityMS, settings.RiseAtTakeOffM)],
            pieces => Plausible.Push(pieces, pieces[0].FromS + (2 * dipTime))
        );
    }
}
