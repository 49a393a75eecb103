using Jumpwright.Simulation.Chance;

namespace Jumpwright.Simulation.Foreign;

/// <summary>
/// How a standing body moves: a damped spring (the body held upright) shaken by coloured noise, with breath and heartbeat. Its
/// force is that of its own motion and of nothing else.
/// </summary>
internal sealed class Swaying
{
    private readonly double[] _acceleration;
    private readonly double[] _velocity;
    private readonly double[] _position;

    private Swaying(int steps)
    {
        _acceleration = new double[steps];
        _velocity = new double[steps];
        _position = new double[steps];
    }

    /// <summary>Draws one.</summary>
    /// <param name="random">Chance.</param>
    /// <param name="seconds">How long.</param>
    /// <param name="accelerationMS2">Root mean square of its acceleration, m/s².</param>
    public static Swaying Draw(SeededRandom random, double seconds, double accelerationMS2)
    {
        const double h = FineMotion.StepS;
        const double warm = 6;
        int skip = (int)(warm / h);
        var sway = new Swaying((int)(seconds / h) + 2);
        double own = 2 * Math.PI * random.Uniform(0.25, 0.8);
        double damping = random.Uniform(0.2, 0.7);
        double corner = 2 * Math.PI * random.Uniform(0.8, 4);
        double breathHz = random.Uniform(0.2, 0.35);
        double breath = random.Chance(0.5) ? random.Uniform(0, 0.3) : 0;
        double beatS = 1 / random.Uniform(0.9, 1.4);
        double beat = random.Chance(0.5) ? random.Uniform(0.2, 0.7) : 0;
        double driven = 0;
        double x = 0;
        double v = 0;
        double squares = 0;
        double white = 0;
        int hold = 0;
        // A coarse first run for its size, so that breath and beats stand in proportion.
        for (int i = -skip; i < sway._acceleration.Length; i++)
        {
            if (hold-- <= 0)
            {
                white = random.Normal();
                hold = 19;
            }

            driven += h * corner * (white - driven);
            double a = driven - (own * own * x) - (2 * damping * own * v);
            v += a * h;
            x += v * h;
            if (i >= 0)
            {
                (sway._acceleration[i], sway._velocity[i], sway._position[i]) = (a, v, x);
                squares += a * a;
            }
        }

        double scale = accelerationMS2 / Math.Sqrt(squares / sway._acceleration.Length);
        for (int i = 0; i < sway._acceleration.Length; i++)
        {
            double t = i * h;
            double w = 2 * Math.PI * breathHz;
            double b = accelerationMS2 * breath;
            (double sin, double cos) = Math.SinCos(w * t);
            // A beat is the second derivative of a bell: it leaves neither speed nor shift.
            double u = ((t % beatS) - (beatS / 2)) / 0.05;
            double bell = accelerationMS2 * beat * Math.Exp(-u * u / 2);
            sway._acceleration[i] = (scale * sway._acceleration[i]) + (b * sin) + (bell * ((u * u) - 1) * 1.5);
            sway._velocity[i] = (scale * sway._velocity[i]) - (b * cos / w) - (bell * u * 0.05 * 1.5);
            sway._position[i] = (scale * sway._position[i]) - (b * sin / (w * w)) + (bell * 0.0025 * 1.5);
        }

        return sway;
    }

    public double Acceleration(double timeS) => _acceleration[Index(timeS)];

    public double Velocity(double timeS) => _velocity[Index(timeS)];

    public double Position(double timeS) => _position[Index(timeS)];

    private int Index(double timeS) =>
        Math.Clamp((int)Math.Round(timeS / FineMotion.StepS), 0, _acceleration.Length - 1);
}
