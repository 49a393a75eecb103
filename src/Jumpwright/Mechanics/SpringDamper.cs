using Jumpwright.Quantities;

namespace Jumpwright.Mechanics;

/// <summary>
/// A mass that lands on a linear spring with a linear damper: z'' = g − ω² z − 2 ζ ω z', z downward from first contact; the ground
/// force per mass is ω² z + 2 ζ ω z'. Solved in closed form about the resting point g / ω². Damped below critical only.
/// </summary>
/// <param name="FrequencyRadS">ω, rad/s: √(stiffness / mass).</param>
/// <param name="Damping">ζ, of critical; from 0 to below 1.</param>
public sealed record SpringDamper(double FrequencyRadS, double Damping)
{
    private const double G = Gravity.MetresPerSecondSquared;
    private const int Steps = 100;

    /// <summary>Stiffness, N/m, of a body of that mass.</summary>
    public double StiffnessNM(double massKg) => massKg * FrequencyRadS * FrequencyRadS;

    /// <summary>Force over body weight at that time after contact, for that touch-down speed.</summary>
    public double ForceBw(double speedMS, double timeS)
    {
        if (timeS < 0)
        {
            return 0;
        }

        double w = FrequencyRadS;
        double wd = w * Math.Sqrt(1 - (Damping * Damping));
        double a = -G / (w * w);
        double b = (speedMS + (Damping * w * a)) / wd;
        double decay = Math.Exp(-Damping * w * timeS);
        (double sin, double cos) = Math.SinCos(wd * timeS);
        double x = decay * ((a * cos) + (b * sin));
        double v = (-Damping * w * x) + (decay * wd * ((b * cos) - (a * sin)));
        return ((w * w * (x + (G / (w * w)))) + (2 * Damping * w * v)) / G;
    }

    /// <summary>Greatest force over body weight after landing with that speed.</summary>
    public double PeakBw(double speedMS)
    {
        double span = Math.PI / (FrequencyRadS * Math.Sqrt(1 - (Damping * Damping)));
        double peak = 0;
        double at = 0;
        for (int i = 0; i <= Steps; i++)
        {
            double t = span * i / Steps;
            double force = ForceBw(speedMS, t);
            if (force > peak)
            {
                (peak, at) = (force, t);
            }
        }

        double step = span / Steps;
        double left = ForceBw(speedMS, at - step);
        double right = ForceBw(speedMS, at + step);
        double bend = left - (2 * peak) + right;
        return at > 0 && bend < 0 ? peak - (Math.Pow(right - left, 2) / (8 * bend)) : peak;
    }

    /// <summary>Steepest rise of force over 10 ms, body weights a second.</summary>
    public double LoadingBwS(double speedMS)
    {
        double steepest = 0;
        for (int i = 0; i <= 200; i++)
        {
            double t = -0.010 + (0.001 * i);
            steepest = Math.Max(steepest, ForceBw(speedMS, t + 0.010) - ForceBw(speedMS, t));
        }

        return steepest / 0.010;
    }
}
