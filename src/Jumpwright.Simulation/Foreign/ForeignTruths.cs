using System.Collections.Immutable;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Simulation.Devices;
using Jumpwright.Trials;

namespace Jumpwright.Simulation.Foreign;

/// <summary>What is so of a fine motion, by the contract's names.</summary>
internal static class ForeignTruths
{
    private const double G = Gravity.MetresPerSecondSquared;

    public static Truth Of(FineMotion motion, ForeignPlates plates)
    {
        SortedDictionary<string, double> found = new(StringComparer.Ordinal)
        {
            [MeasureNames.BodyWeight] = motion.BodyMassKg * G,
            [MeasureNames.SystemWeight] = motion.WeightN,
        };
        bool hops = motion.Task == JumpTask.RepeatedHops;
        if (hops)
        {
            Hops(motion, found);
        }
        else if (motion.TakeOffsS.Count > 0)
        {
            Jump(motion, plates, found);
        }

        bool lands = motion.TouchDownsS.Count > (motion.Task is JumpTask.DropJump or JumpTask.ApproachJump ? 1 : 0);
        if (lands)
        {
            double touch = motion.TouchDownsS[^1];
            double v = motion.TouchDownVelocities[^1];
            found[MeasureNames.LandingNetImpulse] = -motion.MassKg * v;
            if (motion.Task == JumpTask.DropLanding)
            {
                found[MeasureNames.DropHeight] = v * v / (2 * G);
            }

            int from = (int)(touch / FineMotion.StepS);
            int lowest = from + 1;
            double peak = 0;
            while (motion.VelocityMS[lowest] < 0)
            {
                lowest++;
            }

            for (int i = from; i < motion.ForceN.Count; i++)
            {
                peak = Math.Max(peak, motion.ForceN[i]);
            }

            found[MeasureNames.PeakLandingForce] = peak;
            if (plates.TwoPlates)
            {
                found[MeasureNames.AsymmetryLandingImpulse] = Asymmetry(motion, plates, from, lowest);
            }
        }

        return new Truth(new TrialEvents(), found.ToImmutableSortedDictionary(StringComparer.Ordinal), []);
    }

    private static void Jump(FineMotion motion, ForeignPlates plates, SortedDictionary<string, double> found)
    {
        double v = motion.TakeOffVelocities[0];
        double height = v * v / (2 * G);
        double takeOff = motion.TakeOffsS[0];
        found[MeasureNames.TakeOffVelocity] = v;
        found[MeasureNames.JumpHeight] = height;
        int to = (int)(takeOff / FineMotion.StepS);
        int bottom = to;
        while (bottom > 0 && motion.VelocityMS[bottom] > 0)
        {
            bottom--;
        }

        if (motion.Task is not (JumpTask.SquatJump or JumpTask.DropJump or JumpTask.ApproachJump))
        {
            found[MeasureNames.CountermovementDepth] = -motion.PositionM[bottom];
        }

        if (motion.Task is JumpTask.DropJump or JumpTask.ApproachJump)
        {
            double contact = takeOff - motion.TouchDownsS[0];
            found[MeasureNames.ContactTime] = contact;
            found[MeasureNames.ReactiveStrengthIndex] = height / contact;
            if (motion.Task == JumpTask.DropJump)
            {
                double down = motion.TouchDownVelocities[0];
                found[MeasureNames.DropHeight] = down * down / (2 * G);
            }
        }

        if (plates.TwoPlates && motion.Task != JumpTask.SquatJump)
        {
            found[MeasureNames.AsymmetryPropulsiveImpulse] = Asymmetry(motion, plates, bottom, to);
        }

        if (motion.TouchDownsS.Count > 0 && motion.TouchDownsS[^1] > takeOff)
        {
            double flight = motion.TouchDownsS[^1] - takeOff;
            found[MeasureNames.FlightTime] = flight;
            found[MeasureNames.JumpHeightFlightTime] = G * flight * flight / 8;
        }
    }

    private static void Hops(FineMotion motion, SortedDictionary<string, double> found)
    {
        // The first take-off belongs to the jump into the series.
        List<(double ContactS, double FlightS)> all = [];
        for (int k = 0; k + 1 < motion.TouchDownsS.Count; k++)
        {
            double contact = motion.TakeOffsS[k + 1] - motion.TouchDownsS[k];
            all.Add((contact, motion.TouchDownsS[k + 1] - motion.TakeOffsS[k + 1]));
        }

        (double ContactS, double FlightS)[] best =
        [
            .. all.Skip(1)
                .Where(h => h.ContactS < 0.25)
                .OrderByDescending(h => h.FlightS * h.FlightS / h.ContactS)
                .Take(5),
        ];
        if (best.Length > 0)
        {
            found[MeasureNames.ContactTime] = best.Average(h => h.ContactS);
            found[MeasureNames.FlightTime] = best.Average(h => h.FlightS);
            found[MeasureNames.JumpHeightFlightTime] = best.Average(h => G * h.FlightS * h.FlightS / 8);
        }
    }

    private static double Asymmetry(FineMotion motion, ForeignPlates plates, int from, int to)
    {
        double left = 0;
        double both = 0;
        for (int i = from; i < to; i++)
        {
            both += motion.ForceN[i];
            left += motion.ForceN[i] * plates.LeftAt(motion, i * FineMotion.StepS);
        }

        return 100 * ((2 * left) - both) / both;
    }
}
