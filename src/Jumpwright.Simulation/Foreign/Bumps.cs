using Jumpwright.Simulation.Chance;

namespace Jumpwright.Simulation.Foreign;

/// <summary>Shapes of force over a contact or a push, s from 0 to 1.</summary>
internal static class Bumps
{
    /// <summary>Nothing, up and nothing again, with the steepness of each end its own: like s to that power at the ends.</summary>
    public static double Beta(double s, double first, double last)
    {
        if (s is <= 0 or >= 1)
        {
            return 0;
        }

        (double sin, double cos) = Math.SinCos(Math.PI * s / 2);
        return Math.Pow(sin, first) * Math.Pow(cos, last);
    }

    /// <summary>One until the end is near, then down to nothing: like the time left to that power at the very end.</summary>
    public static double End(double leftS, double overS, double power) =>
        leftS <= 0 ? 0
        : leftS >= overS ? 1
        : Math.Pow(Math.Sin(Math.PI / 2 * leftS / overS), power);

    /// <summary>Two bells, nothing at the beginning.</summary>
    public static Func<double, double> TwoBells(SeededRandom random)
    {
        double early = random.Uniform(0.2, 0.4);
        double late = random.Uniform(0.65, 0.9);
        double wide = random.Uniform(0.12, 0.3);
        double wider = random.Uniform(0.15, 0.3);
        double part = random.Uniform(0.2, 0.8);
        return s =>
        {
            double a = (s - early) / wide;
            double b = (s - late) / wider;
            return (1 - Math.Exp(-s * s / 0.01)) * ((part * Math.Exp(-a * a)) + ((1 - part) * Math.Exp(-b * b)));
        };
    }

    public static double Smooth(double along)
    {
        double s = Math.Clamp(along, 0, 1);
        return s * s * (3 - (2 * s));
    }
}
