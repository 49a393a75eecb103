using Jumpwright.Quantities;
using Jumpwright.Recordings;

namespace Jumpwright.Simulation.Foreign;

/// <summary>
/// A motion written down step by step, fine against any plate: the force is straight within a step, so that velocity and
/// displacement follow from it exactly. Nothing is solved for beforehand: where the athlete ends up is where the force leads.
/// </summary>
internal sealed class FineMotion(JumpTask task, double bodyMassKg, double loadKg)
{
    private const double G = Gravity.MetresPerSecondSquared;

    /// <summary>Seconds a step: 20,000 a second.</summary>
    public const double StepS = 1.0 / 20_000;

    private readonly List<double> _force = new(160_000);
    private readonly List<double> _velocity = new(160_000);
    private readonly List<double> _position = new(160_000);

    public JumpTask Task { get; } = task;

    public double BodyMassKg { get; } = bodyMassKg;

    public double LoadKg { get; } = loadKg;

    public double MassKg => BodyMassKg + LoadKg;

    public double WeightN => MassKg * G;

    public IReadOnlyList<double> ForceN => _force;

    public IReadOnlyList<double> PositionM => _position;

    public IReadOnlyList<double> VelocityMS => _velocity;

    /// <summary>Time of the last step, s from the beginning.</summary>
    public double NowS => (_force.Count - 1) * StepS;

    public double NowV => _velocity[^1];

    public double NowX => _position[^1];

    /// <summary>Instants at which the feet leave the plate in the task, and at which they meet it, s.</summary>
    public List<double> TakeOffsS { get; } = [];

    public List<double> TouchDownsS { get; } = [];

    /// <summary>Velocity at each of them, m/s.</summary>
    public List<double> TakeOffVelocities { get; } = [];

    public List<double> TouchDownVelocities { get; } = [];

    /// <summary>The first instant.</summary>
    public void Begin(double forceN, double xM, double vMS)
    {
        _force.Add(forceN);
        _position.Add(xM);
        _velocity.Add(vMS);
    }

    /// <summary>One step to a new force on the body, N.</summary>
    public void Step(double forceN) => Step(forceN, onPlate: true);

    /// <summary>One step on other ground: the plate stays empty and the body stays where it is.</summary>
    public void Elsewhere()
    {
        _force.Add(0);
        _position.Add(NowX);
        _velocity.Add(0);
    }

    /// <summary>Puts the body in the air: a new height and velocity without a step.</summary>
    public void Drop(double xM, double vMS)
    {
        _position[^1] = xM;
        _velocity[^1] = vMS;
    }

    /// <summary>Free flight down to a height; notes the touch-down between steps.</summary>
    public void Fly(double downToM)
    {
        while (NowV > 0 || NowX > downToM)
        {
            double x = NowX;
            double v = NowV;
            double t = NowS;
            Step(0, onPlate: false);
            if (NowV <= 0 && NowX <= downToM)
            {
                // x + v·t − g·t²/2 = height, the later root.
                double later = (v + Math.Sqrt(Math.Max((v * v) + (2 * G * (x - downToM)), 0))) / G;
                TouchDownsS.Add(t + later);
                TouchDownVelocities.Add(v - (G * later));
            }
        }
    }

    /// <summary>Notes a take-off at an instant of the last step, with its velocity.</summary>
    public void Leave(double atS)
    {
        TakeOffsS.Add(atS);
        TakeOffVelocities.Add(NowV + (G * (NowS - atS)));
    }

    /// <summary>Value of one of the curves at an instant, straight between steps.</summary>
    public static double At(IReadOnlyList<double> curve, double timeS)
    {
        double at = Math.Clamp(timeS / StepS, 0, curve.Count - 1.000001);
        int i = (int)at;
        return curve[i] + ((curve[i + 1] - curve[i]) * (at - i));
    }

    private void Step(double forceN, bool onPlate)
    {
        double f0 = _force[^1];
        double a0 = (f0 / MassKg) - G;
        double a1 = (forceN / MassKg) - G;
        _position.Add(NowX + (NowV * StepS) + (((2 * a0) + a1) * StepS * StepS / 6));
        _velocity.Add(NowV + ((a0 + a1) * StepS / 2));
        _force.Add(onPlate ? forceN : 0);
    }
}
