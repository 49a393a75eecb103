using Jumpwright.Simulation.Chance;
using Jumpwright.Simulation.Motions;
using Jumpwright.Simulation.Tasks;

namespace Jumpwright.Simulation.Devices;

/// <summary>Samples a motion as force plates would. Events fall between samples.</summary>
public static class Plates
{
    public static SimulatedRecording Record(SimulatedMotion motion, PlateSettings settings, SeededRandom random)
    {
        Motion m = motion.Motion;
        double step = 1 / settings.RateHz;
        double first = settings.CutFromS + (random.Unit() * step) - settings.StepOnS;
        double end = (settings.CutToS ?? m.ToS) + settings.StepOffS;
        int count = (int)Math.Floor((end - first) * settings.RateHz) + 1;
        while (first + ((count - 1) * step) > end)
        {
            count--;
        }

        double[] total = new double[count];
        double[] left = settings.TwoPlates ? new double[count] : [];
        double[] right = settings.TwoPlates ? new double[count] : [];
        Sway disturbance = Sway.Draw(random, settings.DisturbanceN);
        Force(motion, settings, first, total, disturbance);
        if (settings.TwoPlates)
        {
            Shares shares = new(motion, settings);
            for (int i = 0; i < count; i++)
            {
                double share = total[i] == 0 ? 0 : shares.LeftAt(first + (i * step));
                left[i] = total[i] * share;
                right[i] = total[i] - left[i];
            }

            double part = settings.NoiseN / Math.Sqrt(2);
            Spoil(motion, settings, first, left, settings.OffsetN, part, 0.5, random);
            Spoil(motion, settings, first, right, settings.RightOffsetN, part, 0.5, random);
            total = [];
        }
        else
        {
            Spoil(motion, settings, first, total, settings.OffsetN, settings.NoiseN, 1, random);
        }

        return new SimulatedRecording(motion, settings, Truths.Of(motion, settings, first), first, total, left, right);
    }

    private static void Force(
        SimulatedMotion motion,
        PlateSettings settings,
        double first,
        double[] total,
        Sway disturbance
    )
    {
        Motion m = motion.Motion;
        double step = 1 / settings.RateHz;
        int piece = 0;
        for (int i = 0; i < total.Length; i++)
        {
            double t = first + (i * step);
            if (t < m.FromS)
            {
                total[i] = SteppingOn(m, t, settings.StepOnS);
                continue;
            }

            if (t > m.ToS)
            {
                total[i] = SteppingOff(m, t);
                continue;
            }

            while (piece + 1 < m.Pieces.Length && m.Pieces[piece].ToS < t)
            {
                piece++;
            }

            MotionPiece now = m.Pieces[piece];
            if (now.InContact)
            {
                double force = Math.Max(0, (m.SystemMassKg * now.At(t).AccelerationMS2) + m.WeightN);
                if (!disturbance.IsNone)
                {
                    // Never more than the force itself: a plate cannot be pulled.
                    force = Math.Max(0, force + disturbance.At(t).AccelerationMS2);
                }

                total[i] = force;
            }
        }
    }

    /// <summary>
    /// Stepping on before the motion begins: the plate carries a growing part of the weight while the other foot is still
    /// beside it. Not part of the solved motion (the ground beside the plate carries the rest).
    /// </summary>
    private static double SteppingOn(Motion m, double t, double stepOnS)
    {
        if (stepOnS <= 0)
        {
            return 0;
        }

        double along = 1 + (t / stepOnS);
        double on = Math.Clamp((along - 0.45) / 0.3, 0, 1);
        double loaded = on * on * (3 - (2 * on));
        double wobble = on is > 0 and < 1 ? 0.18 * Math.Sin(Math.PI * on) * Math.Sin(7 * Math.PI * on) : 0;
        return Math.Max(0, m.WeightN * (loaded + wobble));
    }

    private static double SteppingOff(Motion m, double t)
    {
        double off = Math.Clamp((t - m.ToS) / 0.5, 0, 1);
        return m.WeightN * (1 - (off * off * (3 - (2 * off))));
    }

    private static void Spoil(
        SimulatedMotion motion,
        PlateSettings settings,
        double first,
        double[] force,
        double offset,
        double noise,
        double part,
        SeededRandom random
    )
    {
        double step = 1 / settings.RateHz;
        double humPhase = random.Uniform(0, 2 * Math.PI);
        double humStep = 2 * Math.PI * settings.HumHz * step;
        double driftPerSample = force.Length > 1 ? settings.DriftN * part / (force.Length - 1) : 0;
        double unit = Math.Pow(10, -settings.ForceDecimals);
        double quantum = Math.Max(settings.QuantumN, unit);
        for (int i = 0; i < force.Length; i++)
        {
            double value = force[i] + offset + (driftPerSample * i);
            if (noise > 0)
            {
                value += noise * random.Normal();
            }

            if (settings.HumN > 0)
            {
                value += settings.HumN * part * Math.Sin(humPhase + (humStep * i));
            }

            force[i] = value;
        }

        if (settings.RingingN > 0)
        {
            foreach (ContactSpan contact in motion.Contacts)
            {
                Ring(settings, first, force, contact.ToS, part, random.Uniform(0, 2 * Math.PI));
            }
        }

        for (int i = 0; i < force.Length; i++)
        {
            force[i] = Math.Round(force[i] / quantum) * quantum;
        }
    }

    private static void Ring(
        PlateSettings settings,
        double first,
        double[] force,
        double atS,
        double part,
        double phase
    )
    {
        int from = Math.Max(0, (int)Math.Ceiling((atS - first) * settings.RateHz));
        int to = Math.Min(force.Length, from + (int)(8 * settings.RingingDecayS * settings.RateHz));
        for (int i = from; i < to; i++)
        {
            double since = first + (i / settings.RateHz) - atS;
            force[i] +=
                settings.RingingN
                * part
                * Math.Exp(-since / settings.RingingDecayS)
                * Math.Sin(phase + (2 * Math.PI * settings.RingingHz * since));
        }
    }
}
