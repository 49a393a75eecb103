using MathNet.Numerics.Statistics;

namespace Jumpwright.Tests.Trials;

/// <summary>
/// A second, plain implementation of the methods of the papers, sharing no code with the engine: weight is the mean of the
/// quietest second, integration by the trapezoid rule from there (Owen et al. 2014), take-off and landing at a threshold of
/// five standard deviations of the flight or 0.5 N, height by impulse–momentum and by flight time (Linthorne 2001).
/// </summary>
internal sealed class PlainMethods
{
    public PlainMethods(double[] forceN, double rateHz)
    {
        int second = (int)rateHz;
        int flightFrom = Array.FindIndex(forceN, f => f < 20);
        int flightTo = Array.FindIndex(forceN, flightFrom, f => f > 20);
        double[] middle = forceN[(flightFrom + (flightTo - flightFrom) / 4)..(flightTo - (flightTo - flightFrom) / 4)];
        double zero = middle.Mean();
        double threshold = Math.Max(5 * middle.StandardDeviation(), 0.5);
        double[] force = [.. forceN.Select(f => f - zero)];

        int best = 0;
        double least = double.PositiveInfinity;
        for (int i = 0; i + second < flightFrom; i += 10)
        {
            double sd = force[i..(i + second)].StandardDeviation();
            (best, least) = sd < least ? (i, sd) : (best, least);
        }

        WeightN = force[best..(best + second)].Mean();
        int takeOff = Array.FindIndex(force, best + second, f => f < threshold);
        int landing = Array.FindIndex(force, takeOff, f => f > threshold);
        double impulse = 0;
        for (int i = best + (second / 2); i < takeOff; i++)
        {
            impulse += (((force[i] + force[i + 1]) / 2) - WeightN) / rateHz;
        }

        TakeOffSample = takeOff;
        TakeOffVelocityMS = impulse / (WeightN / 9.81);
        HeightM = TakeOffVelocityMS * TakeOffVelocityMS / (2 * 9.81);
        FlightS = (landing - takeOff) / rateHz;
        FlightHeightM = 9.81 * FlightS * FlightS / 8;
    }

    public double WeightN { get; }

    public int TakeOffSample { get; }

    /// <summary>Velocity at that very sample, m/s.</summary>
    public double TakeOffVelocityMS { get; }

    public double HeightM { get; }

    public double FlightS { get; }

    public double FlightHeightM { get; }
}
