using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Simulation.Chance;
using Jumpwright.Simulation.Motions;

namespace Jumpwright.Simulation.Tasks;

/// <summary>
/// Solves drop jumps, drop landings and the plants of approach jumps, of which a plate sees the vertical part. The plate is empty
/// until touch-down.
/// </summary>
public static class DropJumps
{
    private const double G = Gravity.MetresPerSecondSquared;

    /// <summary>Steps off, lands and rebounds.</summary>
    /// <exception cref="InvalidOperationException">No motion with these settings keeps the feet on the ground.</exception>
    public static SimulatedMotion Make(DropJumpSettings settings, SeededRandom random)
    {
        Sway sway = Sway.Draw(random, settings.SwayN / settings.SystemMassKg, settings.SwayColour);
        return Attempts.Until(
            () => JumpOnce(settings, random, sway, JumpTask.DropJump, landsElsewhere: false),
            $"drop jump of {settings.DropHeightM:0.00} m with {settings.ContactS:0.000} s of contact"
        );
    }

    /// <summary>
    /// Comes out of a run-up, plants and takes off: the drop height is that of the last step's flight. Lands on the plate or,
    /// where <paramref name="landsElsewhere"/>, beyond it.
    /// </summary>
    /// <exception cref="InvalidOperationException">No motion with these settings keeps the feet on the ground.</exception>
    public static SimulatedMotion MakeApproach(DropJumpSettings settings, SeededRandom random, bool landsElsewhere)
    {
        Sway sway = Sway.Draw(random, settings.SwayN / settings.SystemMassKg, settings.SwayColour);
        return Attempts.Until(
            () => JumpOnce(settings, random, sway, JumpTask.ApproachJump, landsElsewhere),
            $"approach jump of {settings.TakeOffVelocityMS:0.00} m/s with {settings.ContactS:0.000} s of contact"
        );
    }

    /// <summary>Steps off and lands without a rebound.</summary>
    /// <exception cref="InvalidOperationException">No motion with these settings keeps the feet on the ground.</exception>
    public static SimulatedMotion MakeLanding(DropJumpSettings settings, SeededRandom random)
    {
        Sway sway = Sway.Draw(random, settings.SwayN / settings.SystemMassKg, settings.SwayColour);
        return Attempts.Until(
            () => LandOnce(settings, random, sway),
            $"drop landing from {settings.DropHeightM:0.00} m"
        );
    }

    private static MotionBuilder Fall(DropJumpSettings settings, Sway sway)
    {
        MotionBuilder builder = new(settings.SystemMassKg, sway);
        // The plate is empty for StandBeforeS; the last part of it is the fall itself.
        double fall = Math.Sqrt(2 * settings.DropHeightM / G);
        double empty = Math.Max(settings.StandBeforeS, fall + 0.1);
        builder.StartInAir(
            settings.RiseAtTouchDownM + (G * fall * empty) - (0.5 * G * empty * empty),
            G * (empty - fall)
        );
        builder.FlyFor(empty);
        return builder;
    }

    private static SimulatedMotion? JumpOnce(
        DropJumpSettings settings,
        SeededRandom random,
        Sway sway,
        JumpTask task,
        bool landsElsewhere
    )
    {
        MotionBuilder builder = Fall(settings, sway);
        double touchDown = builder.NowS;
        if (
            !Rebounds.Add(
                builder,
                random,
                settings.ContactS,
                settings.TakeOffVelocityMS,
                settings.RiseAtTakeOffM,
                settings.Bimodal
            )
        )
        {
            return null;
        }

        double takeOff = builder.NowS;
        double? landing = null;
        if (landsElsewhere)
        {
            builder.FlyFor(settings.StandAfterS);
        }
        else
        {
            builder.FlyTo(settings.RiseAtTakeOffM - settings.LandingPostureDropM);
            landing = builder.NowS;
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
            null,
            null,
            [new ContactSpan(touchDown, takeOff)],
            landing,
            LandsElsewhere: landsElsewhere
        );
    }

    private static SimulatedMotion? LandOnce(DropJumpSettings settings, SeededRandom random, Sway sway)
    {
        MotionBuilder builder = Fall(settings, sway);
        double landing = builder.NowS;
        if (!Landings.Add(builder, random, settings.LandingDepthM))
        {
            return null;
        }

        builder.Stand(settings.StandAfterS);
        return new SimulatedMotion(
            JumpTask.DropLanding,
            settings.BodyMassKg,
            settings.ExternalLoadKg,
            builder.Build(),
            null,
            null,
            [],
            landing
        );
    }
}
