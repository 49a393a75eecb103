using Jumpwright.Simulation.Chance;

namespace Jumpwright.Simulation.Motions;

/// <summary>
/// Sway of a standing person: a sum of sines between 0.3 and 3 Hz whose force grows weaker with frequency. As a motion it is
/// real: the movement that follows is solved from the state the sway has left, so the truth stays exact.
/// </summary>
public sealed class Sway
{
    public const double LowestHz = 0.3;
    public const double HighestHz = 3.0;
    private readonly double[] _amplitudeMS2;
    private readonly double[] _omega;
    private readonly double[] _phase;

    private Sway(double[] amplitudeMS2, double[] omega, double[] phase) =>
        (_amplitudeMS2, _omega, _phase) = (amplitudeMS2, omega, phase);

    public static Sway None { get; } = new([], [], []);

    public bool IsNone => _omega.Length == 0;

    /// <summary>Draws a sway whose acceleration has that root mean square, m/s².</summary>
    /// <param name="rmsMS2">Root mean square of the acceleration, m/s²; force over mass.</param>
    /// <param name="colour">Power of force falls as frequency to the minus this; 0 is flat.</param>
    public static Sway Draw(SeededRandom random, double rmsMS2, double colour = 1, int sines = 9)
    {
        if (rmsMS2 <= 0)
        {
            return None;
        }

        double[] amplitude = new double[sines];
        double[] omega = new double[sines];
        double[] phase = new double[sines];
        double square = 0;
        for (int i = 0; i < sines; i++)
        {
            double along = (i + random.Unit()) / sines;
            double hertz = LowestHz * Math.Pow(HighestHz / LowestHz, along);
            omega[i] = 2 * Math.PI * hertz;
            phase[i] = random.Uniform(0, 2 * Math.PI);
            // Log-spaced lines: a line stands for a band as wide as its frequency.
            amplitude[i] = Math.Pow(hertz, (1 - colour) / 2) * random.Uniform(0.5, 1.5);
            square += amplitude[i] * amplitude[i] / 2;
        }

        double scale = rmsMS2 / Math.Sqrt(square);
        for (int i = 0; i < sines; i++)
        {
            amplitude[i] *= scale;
        }

        return new Sway(amplitude, omega, phase);
    }

    public BodyState At(double timeS)
    {
        double x = 0;
        double v = 0;
        double a = 0;
        for (int i = 0; i < _omega.Length; i++)
        {
            (double sin, double cos) = Math.SinCos((_omega[i] * timeS) + _phase[i]);
            double amplitude = _amplitudeMS2[i];
            a += amplitude * sin;
            v -= amplitude * cos / _omega[i];
            x -= amplitude * sin / (_omega[i] * _omega[i]);
        }

        return new BodyState(x, v, a);
    }

    /// <summary>Third derivative of the displacement, m/s³.</summary>
    public double JerkAt(double timeS)
    {
        double jerk = 0;
        for (int i = 0; i < _omega.Length; i++)
        {
            jerk += _amplitudeMS2[i] * _omega[i] * Math.Cos((_omega[i] * timeS) + _phase[i]);
        }

        return jerk;
    }
}
