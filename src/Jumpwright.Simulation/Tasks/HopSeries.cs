using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Simulation.Chance;
using Jumpwright.Simulation.Motions;

namespace Jumpwright.Simulation.Tasks;

/// <summary>Solves repeated hops: a small jump to start, rebounds, a landing.</summary>
public static class HopSeries
{
    private const double G = Gravity.MetresPerSecondSquared;

    /// <summary>Makes one.</summary>
    /// <exception cref="InvalidOperationException">No motion with these settings keeps the feet on the ground.</exception>
    public static SimulatedMotion Make(HopSettings settings, SeededRandom random)
    {
        Sway sway = Sway.Draw(random, settings.SwayN / settings.SystemMassKg, settings.SwayColour);
        return Attempts.Until(
            () => TryOnce(settings, random, sway),
            $"series of hops of {settings.HeightM:0.00} m with {settings.ContactS:0.000} s of contact"
        );
    }

    private static SimulatedMotion? TryOnce(HopSettings settings, SeededRandom random, Sway sway)
    {
        MotionBuilder builder = new(settings.SystemMassKg, sway);
        builder.Stand(settings.StandBeforeS);
        double onset = builder.NowS;
        CountermovementSettings first = new()
        {
            BodyMassKg = settings.BodyMassKg,
            ExternalLoadKg = settings.ExternalLoadKg,
            RiseAtTakeOffM = settings.RiseAtTakeOffM,
            TakeOffVelocityMS = random.Uniform(1.5, 1.8),
            DepthM = 0.2,
            FallSpeedMS = 0.9,
        };
        if (!CountermovementJumps.AddJump(builder, random, first))
        {
            return null;
        }

        List<ContactSpan> contacts = [];
        for (int i = 0; i < settings.Hops; i++)
        {
            builder.FlyTo(settings.RiseAtTakeOffM - 0.01);
            double touch = builder.NowS;
            // The first contacts of a series are longer and lower (Stratford et al. 2021).
            double early = Math.Max(0, 3 - i) / 3.0;
            double contact = settings.ContactS * (1 + (0.12 * early)) * random.Uniform(0.96, 1.04);
            double height = settings.HeightM * (1 - (0.15 * early)) * random.Uniform(0.94, 1.06);
            if (!AddRebound(builder, random, contact, Math.Sqrt(2 * G * height), settings.RiseAtTakeOffM))
            {
                return null;
            }

            contacts.Add(new ContactSpan(touch, builder.NowS));
        }

        builder.FlyTo(settings.RiseAtTakeOffM - 0.01 - settings.LandingPostureDropM);
        double landing = builder.NowS;
        if (!Landings.Add(builder, random, settings.LandingDepthM))
        {
            return null;
        }

        builder.Stand(settings.StandAfterS);
        return new SimulatedMotion(
            JumpTask.RepeatedHops,
            settings.BodyMassKg,
            settings.ExternalLoadKg,
            builder.Build(),
            onset,
            null,
            [.. contacts],
            landing
        );
    }

    /// <summary>A rebound whose shape does not fit is drawn again, so that one hop does not spoil a series.</summary>
    private static bool AddRebound(
        MotionBuilder builder,
        SeededRandom random,
        double contact,
        double speed,
        double rise
    )
    {
        for (int i = 0; i < 40; i++)
        {
            if (Rebounds.Add(builder, random, contact, speed, rise, bimodal: false))
            {
                return true;
            }
        }

        return false;
    }
}
