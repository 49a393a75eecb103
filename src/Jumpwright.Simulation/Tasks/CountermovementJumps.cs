using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Simulation.Chance;
using Jumpwright.Simulation.Motions;

namespace Jumpwright.Simulation.Tasks;

/// <summary>Solves countermovement jumps, with or without a load, landing on the plate or elsewhere.</summary>
public static class CountermovementJumps
{
    private const double G = Gravity.MetresPerSecondSquared;

    /// <summary>Makes one.</summary>
    /// <exception cref="InvalidOperationException">No motion with these settings keeps the feet on the ground.</exception>
    public static SimulatedMotion Make(
        CountermovementSettings settings,
        SeededRandom random,
        JumpTask task = JumpTask.CountermovementJump
    )
    {
        Sway sway = Sway.Draw(random, settings.SwayN / settings.SystemMassKg, settings.SwayColour);
        return Attempts.Until(
            () => TryOnce(settings, random, sway, task),
            $"countermovement jump of {settings.TakeOffVelocityMS:0.00} m/s from {settings.DepthM:0.00} m"
        );
    }

    private static SimulatedMotion? TryOnce(
        CountermovementSettings settings,
        SeededRandom random,
        Sway sway,
        JumpTask task
    )
    {
        MotionBuilder builder = new(settings.SystemMassKg, sway);
        builder.Stand(settings.StandBeforeS);
        double onset = builder.NowS;
        if (!AddJump(builder, random, settings))
        {
            return null;
        }

        double takeOff = builder.NowS;
        double? landing = null;
        if (settings.LandsElsewhere)
        {
            // The plate stays empty: the athlete stands on the box, or beyond.
            builder.FlyFor((builder.Now.VelocityMS / G) + settings.StandAfterS);
        }
        else
        {
            builder.FlyTo(settings.RiseAtTakeOffM - settings.LandingPostureDropM);
            landing = builder.NowS;
            if (settings.BounceVelocityMS > 0)
            {
                bool bounced = Rebounds.Add(
                    builder,
                    random,
                    random.Uniform(0.25, 0.4),
                    settings.BounceVelocityMS,
                    settings.RiseAtTakeOffM * 0.8,
                    bimodal: false
                );
                if (!bounced)
                {
                    return null;
                }

                builder.FlyTo(settings.RiseAtTakeOffM * 0.5);
            }

            if (!Landings.Add(builder, random, settings.LandingDepthM))
            {
                return null;
            }

            builder.Stand(settings.StandAfterS);
        }

        return new SimulatedMotion(
            task,
            settings.BodyMassKg,
            settings.ExternalLoadKg,
            builder.Build(),
            onset,
            null,
            [new ContactSpan(onset, takeOff)],
            landing,
            LandsElsewhere: settings.LandsElsewhere
        );
    }

    /// <summary>From standing to take-off.</summary>
    internal static bool AddJump(MotionBuilder builder, SeededRandom random, CountermovementSettings settings)
    {
        double fall = settings.FallSpeedMS * random.Uniform(0.92, 1.08);
        double down = settings.DepthM / (random.Uniform(0.42, 0.55) * fall);
        double range = settings.DepthM + settings.RiseAtTakeOffM;
        double up = range / (random.Uniform(0.53, 0.66) * settings.TakeOffVelocityMS);

        double lightest = down * random.Uniform(0.28, 0.45);
        double braking = down * random.Uniform(0.72, 0.88);
        double dip = Math.Min(0.93 * G, 1.9 * fall / (0.62 * down));
        double mean = (settings.TakeOffVelocityMS / up) * random.Uniform(1.0, 1.12);
        (double first, double valley, double second) = settings.Shape switch
        {
            PushShape.Early => (1.35, 1.15, 0.95),
            PushShape.Late => (0.9, 1.05, 1.35),
            PushShape.TwoPeaks => (1.25, 0.95, 1.25),
            _ => (1.1, 1.1, 1.1),
        };
        double firstAt = down + (up * random.Uniform(0.10, 0.24));
        double valleyAt = down + (up * random.Uniform(0.40, 0.50));
        double secondAt = down + (up * random.Uniform(0.66, 0.80));
        BodyState now = builder.Now;
        Knot[] knots =
        [
            new(0, now.AccelerationMS2, 0, KnotSlope.Given, builder.Sway.JerkAt(builder.NowS)),
            new(lightest, -dip, 1),
            new(braking, mean * random.Uniform(0.7, 1.0), 1, KnotSlope.Through),
            new(down, mean * random.Uniform(0.9, 1.2), 1, KnotSlope.Through),
            new(firstAt, mean * first, 1, settings.Shape == PushShape.Late ? KnotSlope.Through : KnotSlope.Flat),
            new(valleyAt, mean * valley, 1, settings.Shape == PushShape.TwoPeaks ? KnotSlope.Flat : KnotSlope.Through),
            new(secondAt, mean * second, 1, settings.Shape == PushShape.Early ? KnotSlope.Through : KnotSlope.Flat),
            new(down + up, -G, 0, KnotSlope.Chord, random.Uniform(0.9, 2.2)),
        ];
        return builder.Contact(
            knots,
            [new Passage(3, 0, -settings.DepthM), new Passage(7, settings.TakeOffVelocityMS, settings.RiseAtTakeOffM)]
        );
    }
}
