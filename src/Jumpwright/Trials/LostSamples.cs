using Jumpwright.Quantities;

namespace Jumpwright.Trials;

/// <summary>Samples that no person makes: spikes, instants of nothing in mid-stance, values that stand still in mid-movement.</summary>
internal static class LostSamples
{
    private const double SpikePart = 0.25;
    private const double SpikeN = 100;

    /// <summary>Right after a touch-down a real force may look like a spike at a low rate, s.</summary>
    private const double ImpactS = 0.08;

    private const double ImpactSpikePart = 0.8;
    private const double ImpactRateHz = 800;
    private const double GapS = 0.05;

    /// <summary>Toward its end a push falls no more than so many times faster from one sample to the next (house rule).</summary>
    private const double Steepening = 2;
    private const double FrozenS = 0.025;

    /// <summary>Where samples were lost the force leaps when it goes on, N and steps of the file; a level part goes on by one step.</summary>
    private const double LeapN = 8;

    private const double LeapSteps = 3;

    /// <summary>One value for longer is somebody standing in a recording without noise, s.</summary>
    private const double StandingS = 0.4;

    public static Refusal? Find(Plate plate)
    {
        ReadOnlySpan<double> force = plate.ForceN;
        (double bent, double fall, double step) = Samples.Roughness(force, 1e-9);
        return Spike(plate, force, bent)
            ?? Gap(plate, force, fall)
            ?? Frozen(plate, force, step)
            ?? FilledGap.Find(plate, plate.HumN > 0 ? StepOf(plate) : step);
    }

    /// <summary>Least step of the file, N: hum that was taken off has left none.</summary>
    private static double StepOf(Plate plate) => Samples.Roughness(plate.Recording.TotalN.Span, 1e-9).Step;

    private static Refusal? Spike(Plate plate, ReadOnlySpan<double> force, double mostBent)
    {
        double load = plate.Levels.LoadN;
        double least = Math.Max(Math.Max(SpikePart * load, SpikeN), 20 * plate.Levels.NoiseN);
        // By rounding alone the two ways of reckoning differ by far less than a thousandth.
        if (mostBent < 1.999 * least)
        {
            return null;
        }

        for (int i = Samples.NextBent(force, 2, least); i + 2 < force.Length; i = Samples.NextBent(force, i + 1, least))
        {
            double mean = (force[i - 1] + force[i + 1]) / 2;
            double off = Math.Abs(force[i] - mean);
            if (off < least || Math.Abs(force[i + 1] - force[i - 1]) > 0.25 * off)
            {
                continue;
            }

            // Its neighbours must lie on the curve that the samples farther out draw.
            double outer = (force[i - 2] + force[i + 2]) / 2;
            if (Math.Abs(outer - mean) > 0.25 * off)
            {
                continue;
            }

            if (!AfterImpact(plate, i) || (off > ImpactSpikePart * load && plate.RateHz >= ImpactRateHz))
            {
                return Refusals.Spike(plate.TimeS(i));
            }
        }

        return null;
    }

    private static bool AfterImpact(Plate plate, int sample)
    {
        foreach (Contact contact in plate.Contacts)
        {
            double since = (sample - contact.Samples.From) / plate.RateHz;
            if (contact.TouchDown is not null && since is > -0.02 and < ImpactS)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The force falls from a good load to nothing within one sample, without notice: no take-off is that fast.</summary>
    private static Refusal? Gap(Plate plate, ReadOnlySpan<double> force, double mostFall)
    {
        double load = plate.Levels.LoadN;
        double step = load * Math.Max(0.5, 300 / plate.RateHz);
        double nothing = Math.Max(0.06 * load, 5 * plate.Levels.NoiseN);
        int first = mostFall > step ? Samples.NextFall(force, 1, step) : force.Length;
        for (int i = first; i < force.Length; i = Samples.NextFall(force, i + 1, step))
        {
            if (force[i] < nothing && !FellBefore(force, i))
            {
                return Refusals.Dropout(plate.TimeS(i));
            }
        }

        // Shorter gaps of the same kind, with a slower fall into them, return just as fast.
        int longest = (int)(GapS * plate.RateHz);
        foreach (Contact contact in plate.Contacts)
        {
            if (Samples.Least(force[contact.Samples.From..contact.Samples.To]) >= nothing)
            {
                continue;
            }

            int from = -1;
            for (int i = contact.Samples.From + 1; i + 1 < contact.Samples.To; i++)
            {
                if (force[i] < nothing && force[i - 1] >= nothing)
                {
                    from = i;
                }
                else if (force[i] >= nothing && from > 0)
                {
                    bool abrupt = force[from - 1] > 0.3 * load && force[i] > 0.3 * load;
                    if (abrupt && i - from < longest)
                    {
                        return Refusals.Dropout(plate.TimeS(from));
                    }

                    from = -1;
                }
            }
        }

        return null;
    }

    /// <summary>
    /// Whether a fall only goes on as the two before it: a hard, short contact ends so at a low rate. Samples are lost without notice.
    /// </summary>
    private static bool FellBefore(ReadOnlySpan<double> force, int i)
    {
        if (i < 3)
        {
            return false;
        }

        double fall = force[i - 1] - force[i];
        return fall < Steepening * (force[i - 2] - force[i - 1])
            && fall < 2 * Steepening * (force[i - 3] - force[i - 2]);
    }

    private static Refusal? Frozen(Plate plate, ReadOnlySpan<double> force, double quantum)
    {
        double load = plate.Levels.LoadN;

        // Without noise a level part of a real curve may repeat a value for a while.
        double seconds = FrozenS * Math.Max(1, Math.Sqrt(Math.Min(quantum, 100)));
        seconds *= plate.Levels.NoiseN > Math.Max(0.5 * quantum, 0.05) ? 1 : 4;
        int longest = (int)Math.Ceiling(seconds * plate.RateHz);
        int standing = (int)(StandingS * plate.RateHz);
        // A run of so many holds one of every so many samples.
        for (int k = longest; k < force.Length; k += longest)
        {
            if (force[k] != force[k - 1])
            {
                continue;
            }

            int from = k - 1;
            while (from > 0 && force[from - 1] == force[k])
            {
                from--;
            }

            int end = force[k..].IndexOfAnyExcept(force[k]);
            int to = end < 0 ? force.Length : k + end;
            int run = to - from - 1;
            double part = force[k] / load;
            bool leaps = end >= 0 && Math.Abs(force[to] - force[k]) > Math.Max(LeapN, LeapSteps * quantum);
            if (run >= longest && run < standing && part > 0.15 && Math.Abs(part - 1) > 0.15 && leaps)
            {
                return Refusals.Frozen(plate.TimeS(from));
            }
        }

        return null;
    }
}
