using Jumpwright.Recordings;
using Jumpwright.Simulation.Chance;
using Jumpwright.Simulation.Devices;

namespace Jumpwright.Simulation.Foreign;

/// <summary>
/// Plates that answer to the force as springs do, wander with nobody on them, warm up, hum with an overtone, and round.
/// </summary>
/// <param name="RateHz">Samples a second.</param>
/// <param name="TwoPlates">Left and right apart.</param>
/// <param name="NoiseN">Standard deviation of a sample's white noise in the total, N.</param>
/// <param name="WanderN">Root mean square of a slow wander of the zero, there with and without a load, N.</param>
/// <param name="WanderHz">Its corner.</param>
/// <param name="UnderLoadN">Root mean square of a slow force that is there under load only and is no motion, N.</param>
/// <param name="HumN">Amplitude of mains hum, N.</param>
/// <param name="DriftN">How far the zero goes in the end, N.</param>
/// <param name="WarmS">Time in which a drift wears off, s; 0 for one that goes on evenly.</param>
/// <param name="OffsetN">Zero of the left or only plate, N.</param>
/// <param name="RightOffsetN">Zero of the right one, N.</param>
/// <param name="ResonanceHz">The plate's own frequency; 0 for none.</param>
/// <param name="Damping">Part of critical damping of that.</param>
/// <param name="QuantumN">Steps of the written force, N.</param>
/// <param name="Shares">Left part of the force in standing, pushing and landing.</param>
internal sealed record ForeignPlates(
    double RateHz,
    bool TwoPlates,
    double NoiseN,
    double WanderN,
    double WanderHz,
    double UnderLoadN,
    double HumN,
    double DriftN,
    double WarmS,
    double OffsetN,
    double RightOffsetN,
    double ResonanceHz,
    double Damping,
    double QuantumN,
    (double Standing, double Pushing, double Landing) Shares
)
{
    /// <summary>Two good plates: 1000 Hz, noise to 2 N.</summary>
    public static ForeignPlates Clean(SeededRandom random, JumpTask task) =>
        new(
            1000,
            true,
            random.Uniform(0.5, 2),
            0,
            0.2,
            0,
            0,
            0,
            0,
            random.Uniform(-1, 1) * (task == JumpTask.SnapDown ? 4 : 8),
            random.Uniform(-1, 1) * (task == JumpTask.SnapDown ? 4 : 8),
            0,
            0,
            0.01,
            (random.NormalWithin(0.5, 0.02), random.NormalWithin(0.5, 0.03), random.NormalWithin(0.5, 0.05))
        );

    /// <summary>Whatever a hall may bring.</summary>
    public static ForeignPlates Varied(SeededRandom random, JumpTask task)
    {
        double zero = task == JumpTask.SnapDown ? 4 : 25;
        return new(
            random.OneOf<double>(200, 250, 300, 500, 600, 1000, 1200, 2000),
            random.Chance(0.6),
            0.5 * Math.Pow(16, random.Unit()),
            random.Chance(0.35) ? random.Uniform(0.2, 1.2) : 0,
            random.Uniform(0.05, 0.4),
            random.Chance(0.2) ? random.Uniform(0.5, 2.5) : 0,
            random.Chance(0.3) ? random.Uniform(0.5, 5) : 0,
            random.Chance(0.3) ? random.Uniform(-6, 6) : 0,
            random.Chance(0.5) ? random.Uniform(2, 10) : 0,
            random.Uniform(-zero, zero),
            random.Uniform(-zero, zero),
            random.Chance(0.3) ? random.Uniform(120, 400) : 0,
            random.Uniform(0.04, 0.3),
            random.Chance(0.25) ? random.Uniform(0.25, 2) : 0.01,
            (random.NormalWithin(0.5, 0.04), random.NormalWithin(0.5, 0.05), random.NormalWithin(0.5, 0.08))
        );
    }

    /// <summary>Left part of the force at an instant.</summary>
    public double LeftAt(FineMotion motion, double timeS)
    {
        double? landing = motion.TouchDownsS.Count > 0 ? motion.TouchDownsS[^1] : null;
        if (landing is { } touch && timeS >= touch)
        {
            return Shares.Landing + ((Shares.Standing - Shares.Landing) * Bumps.Smooth((timeS - touch - 0.7) / 0.6));
        }

        double pushed = motion.TakeOffsS.Count > 0 ? motion.TakeOffsS[0] - 0.7 : double.PositiveInfinity;
        return motion.TouchDownsS.Count > 0 && timeS >= motion.TouchDownsS[0]
            ? Shares.Pushing
            : Shares.Standing + ((Shares.Pushing - Shares.Standing) * Bumps.Smooth((timeS - pushed) / 0.4));
    }

    /// <summary>The recording of a motion: its plates' columns, one or two.</summary>
    public (double[] First, double[] Second) Record(FineMotion motion, SeededRandom random, out double firstS)
    {
        firstS = (random.Unit() / RateHz) + random.Uniform(0, 0.05);
        int count = (int)((motion.NowS - firstS) * RateHz);
        int plates = TwoPlates ? 2 : 1;
        int fine = motion.ForceN.Count;
        double part = 1 / Math.Sqrt(plates);
        double[][] columns = new double[plates][];
        double[] load = new double[fine];
        Slow under = new(random, 1.2, FineMotion.StepS);
        for (int i = 0; i < fine; i++)
        {
            double f = motion.ForceN[i];
            double slow = UnderLoadN > 0 ? UnderLoadN * under.Next() : 0;
            load[i] = f > 0 ? Math.Max(f + (slow * Math.Min(f / 100, 1)), 0) : 0;
        }

        for (int p = 0; p < plates; p++)
        {
            double[] own = new double[fine];
            for (int i = 0; i < fine; i++)
            {
                double left = TwoPlates && load[i] > 0 ? LeftAt(motion, i * FineMotion.StepS) : 1;
                own[i] = load[i] * (p == 0 ? left : 1 - left);
            }

            Resound(own);
            columns[p] = Column(own, p, part, count, firstS, random);
        }

        return (columns[0], TwoPlates ? columns[1] : []);
    }

    private double[] Column(double[] own, int plate, double part, int count, double firstS, SeededRandom random)
    {
        var column = new double[count];
        Slow wander = new(random, WanderHz, 1 / RateHz);
        double phase = random.Uniform(0, 2 * Math.PI);
        double humHz = random.OneOf<double>(50, 60);
        double seconds = count / RateHz;
        double over = TwoPlates ? 0.5 : 1;
        for (int i = 0; i < count; i++)
        {
            double t = i / RateHz;
            double drift = WarmS > 0 ? (1 - Math.Exp(-t / WarmS)) / (1 - Math.Exp(-seconds / WarmS)) : t / seconds;
            double hum =
                Math.Sin((2 * Math.PI * humHz * t) + phase) + (0.3 * Math.Sin((6 * Math.PI * humHz * t) + phase));
            double value =
                FineMotion.At(own, firstS + t)
                + (plate == 0 ? OffsetN : RightOffsetN)
                + (part * ((NoiseN * random.Normal()) + (WanderN * wander.Next())))
                + (over * ((HumN * hum) + (DriftN * drift)));
            column[i] = Math.Round(value / QuantumN) * QuantumN;
        }

        return column;
    }

    /// <summary>The plate as a spring and damper: bilinear, so that nothing but its resonance is added.</summary>
    private void Resound(double[] force)
    {
        if (ResonanceHz <= 0)
        {
            return;
        }

        double k = 2 / FineMotion.StepS / (2 * Math.PI * ResonanceHz);
        double a0 = (k * k) + (2 * Damping * k) + 1;
        double a1 = 2 - (2 * k * k);
        double a2 = (k * k) - (2 * Damping * k) + 1;
        double x1 = force[0];
        double x2 = x1;
        double y1 = x1;
        double y2 = x1;
        for (int i = 0; i < force.Length; i++)
        {
            double x = force[i];
            double y = (x + (2 * x1) + x2 - (a1 * y1) - (a2 * y2)) / a0;
            (x2, x1, y2, y1) = (x1, x, y1, y);
            force[i] = y;
        }
    }
}
