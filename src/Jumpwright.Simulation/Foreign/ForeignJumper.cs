using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Simulation.Chance;

namespace Jumpwright.Simulation.Foreign;

/// <summary>
/// Lets a body go through its tasks by forces over time: smooth bells for pushes, powers of the time left for take-offs,
/// pulses or a stiffening spring for touch-downs, and a spring and damper that creep back to standing.
/// </summary>
internal sealed class ForeignJumper
{
    private const double G = Gravity.MetresPerSecondSquared;
    private const double H = FineMotion.StepS;
    private const double LeastPart = 0.12;

    /// <summary>Nobody pushes harder in a contact, parts of the weight.</summary>
    private const double MostParts = 8;

    private readonly SeededRandom _random;
    private readonly FineMotion _motion;
    private readonly Swaying _sway;
    private readonly bool _varied;

    public ForeignJumper(JumpTask task, SeededRandom random, double swayN, bool varied)
    {
        _random = random;
        _varied = varied;
        double mass = random.Uniform(45, 115);
        double load = task == JumpTask.LoadedJump ? random.OneOf<double>(10, 20, 30, 40) : 0;
        _motion = new FineMotion(task, mass, load);
        _sway = Swaying.Draw(random, 16, swayN / _motion.MassKg);
    }

    private double Before => _varied ? _random.Uniform(1.3, 3) : _random.Uniform(2, 3.5);

    private double After => _varied ? _random.Uniform(2, 3.8) : _random.Uniform(3.4, 4.4);

    private double Edge => _random.Uniform(0.8, 1.6);

    private double W => _motion.WeightN;

    private double M => _motion.MassKg;

    /// <summary>The motion of the task; an exception where the draw leads nowhere.</summary>
    public FineMotion Make()
    {
        switch (_motion.Task)
        {
            case JumpTask.CountermovementJump:
            case JumpTask.LoadedJump:
            case JumpTask.BoxJump:
                Stand(Before);
                double most = _motion.Task == JumpTask.LoadedJump ? 2.4 : 3.3;
                Jump(_random.Uniform(most - 1.2, most), _random.Uniform(0.6, 1.5));
                Finish(_motion.Task == JumpTask.BoxJump);
                break;
            case JumpTask.SquatJump:
                SquatJump();
                Finish(elsewhere: false);
                break;
            case JumpTask.DropJump:
                Fall(_random.Uniform(0.12, 0.6), _random.Uniform(0.04, 0.11));
                Rebound(_random.Uniform(0.14, 0.35), _random.Uniform(1.6, 3));
                Finish(elsewhere: false);
                break;
            case JumpTask.ApproachJump:
                Fall(_random.Uniform(0.01, 0.1), _random.Uniform(-0.02, 0.06));
                Rebound(_random.Uniform(0.18, 0.4), _random.Uniform(2, 3.5));
                Finish(elsewhere: false);
                break;
            case JumpTask.DropLanding:
                Fall(_random.Uniform(0.15, 0.6), _random.Uniform(0.04, 0.11));
                Land();
                break;
            case JumpTask.RepeatedHops:
                Hops();
                break;
            default:
                SnapDown();
                break;
        }

        return _motion;
    }

    private void Stand(double seconds, double atM = 0)
    {
        if (_motion.ForceN.Count == 0)
        {
            _motion.Begin(W + (M * _sway.Acceleration(0)), atM + _sway.Position(0), _sway.Velocity(0));
        }

        double end = _motion.NowS + seconds;
        while (_motion.NowS < end)
        {
            _motion.Step(W + (M * _sway.Acceleration(_motion.NowS + H)));
        }
    }

    /// <summary>A fall onto the empty plate, from rest at a height above where the feet meet it.</summary>
    private void Fall(double heightM, double touchDownM)
    {
        _motion.Begin(0, 0, 0);
        double end = _random.Uniform(0.8, 2);
        while (_motion.NowS < end)
        {
            _motion.Elsewhere();
        }

        _motion.Drop(touchDownM + heightM, 0);
        _motion.Fly(touchDownM);
    }

    /// <summary>Down and up off the plate, from standing.</summary>
    private void Jump(double takeOffV, double fallV)
    {
        double sharp = _random.Uniform(1.2, 2.5);
        double down = _random.Uniform(0.3, 0.55);
        double mean = Mean(s => Arch(s, sharp));
        double dip = fallV / (G * down * mean);
        if (dip > 0.85)
        {
            down *= dip / 0.85;
            dip = 0.85;
        }

        double from = _motion.NowS;
        while (_motion.NowS < from + down)
        {
            double t = Math.Min(_motion.NowS + H - from, down);
            _motion.Step((W * (1 - (dip * Arch(t / down, sharp)))) + Fading(_motion.NowS + H, from));
        }

        Push(takeOffV, _random.Uniform(0.05, 0.14), from);
    }

    /// <summary>A push from the present state to a velocity at a height; how long it takes follows.</summary>
    private void Push(double takeOffV, double atM, double swayEndsFrom)
    {
        Func<double, double> bells = Bumps.TwoBells(_random);
        double over = _random.Uniform(0.03, 0.09);
        double power = Edge;
        double least = 0.12;
        double most = 1.2;
        double reached = double.NaN;
        double amplitude = 0;
        for (int k = 0; k < 40; k++)
        {
            double middle = (least + most) / 2;
            (reached, amplitude) = Reach(bells, over, power, middle, takeOffV);
            (least, most) = reached < atM ? (middle, most) : (least, middle);
        }

        double seconds = (least + most) / 2;
        if (Math.Abs(reached - atM) > 0.01 || amplitude is < 0.2 or > 4.5)
        {
            throw new InvalidOperationException("No such push.");
        }

        double from = _motion.NowS;
        double end = from + seconds;
        while (_motion.NowS < end)
        {
            double t = _motion.NowS + H - from;
            double force = W * (1 + (amplitude * bells(t / seconds))) * Bumps.End(seconds - t, over, power);
            _motion.Step(t >= seconds ? 0 : Math.Max(force + Fading(_motion.NowS + H, swayEndsFrom), 0));
        }

        if (_motion.NowV < 0.5)
        {
            throw new InvalidOperationException("No such push.");
        }

        _motion.Leave(end);
    }

    /// <summary>Where a push of that length ends, m, and how strong it must be for its velocity.</summary>
    private (double ReachedM, double Amplitude) Reach(
        Func<double, double> bells,
        double over,
        double power,
        double seconds,
        double takeOffV
    )
    {
        const int steps = 400;
        double dt = seconds / steps;
        double plain = 0;
        double per = 0;
        for (int i = 0; i < steps; i++)
        {
            double t = (i + 0.5) * dt;
            double end = Bumps.End(seconds - t, over, power);
            plain += dt * G * end;
            per += dt * G * end * bells(t / seconds);
        }

        double amplitude = (takeOffV - _motion.NowV + (G * seconds) - plain) / per;
        double v = _motion.NowV;
        double x = _motion.NowX;
        for (int i = 0; i < steps; i++)
        {
            double t = (i + 0.5) * dt;
            double a = (G * (1 + (amplitude * bells(t / seconds))) * Bumps.End(seconds - t, over, power)) - G;
            x += (v * dt) + (a * dt * dt / 2);
            v += a * dt;
        }

        return (x, amplitude);
    }

    private void SquatJump()
    {
        double depth = _random.Uniform(0.25, 0.45);
        if (_random.Chance(0.5))
        {
            Stand(Before);
            double from = _motion.NowS;
            double over = _random.Uniform(0.7, 1.2);
            while (_motion.NowS < from + over)
            {
                double s = Math.Min((_motion.NowS + H - from) / over, 1);
                // Least jerk: 10 s³ − 15 s⁴ + 6 s⁵, twice derived.
                double a = -depth * ((60 * s) - (180 * s * s) + (120 * s * s * s)) / (over * over);
                _motion.Step(W + (M * (a + _sway.Acceleration(_motion.NowS + H))));
            }

            Stand(_random.Uniform(1.3, 3));
        }
        else
        {
            Stand(Before, -depth);
        }

        double begun = _motion.NowS;
        if (_varied && _random.Chance(0.3))
        {
            double dip = _random.Uniform(0.03, 0.2);
            double down = _random.Uniform(0.1, 0.2);
            while (_motion.NowS < begun + down)
            {
                double s = Math.Min((_motion.NowS + H - begun) / down, 1);
                _motion.Step((W * (1 - (dip * Arch(s, 2)))) + Fading(_motion.NowS + H, begun));
            }
        }

        Push(_random.Uniform(1.6, 3), _random.Uniform(0.05, 0.14), begun);
    }

    private void Hops()
    {
        Stand(Before);
        Jump(_random.Uniform(1.3, 2.2), _random.Uniform(0.4, 0.9));
        int hops = 5 + _random.Below(8);
        for (int k = 0; k < hops; k++)
        {
            Fly();
            Rebound(_random.Uniform(0.15, 0.27), Math.Sqrt(2 * G * _random.Uniform(0.08, 0.4)));
        }

        Finish(elsewhere: false);
    }

    /// <summary>A contact that turns a fall into a rise; how low it goes follows.</summary>
    private void Rebound(double seconds, double takeOffV)
    {
        double first = Edge;
        double last = Edge;
        double aim = _random.Uniform(0.05, 0.14);
        bool impact = _random.Chance(0.35);
        double impactPart = impact ? _random.Uniform(0.05, 0.25) : 0;
        double impactS = _random.Uniform(0.025, 0.05);
        double shift = 0;
        double amplitude = 0;
        double least = -7;
        double most = 7;
        double v0 = _motion.NowV;
        double x0 = _motion.NowX;
        double gain = takeOffV - v0 + (G * seconds);
        double Shape(double t) => Bumps.Beta(t / seconds, first, last) * Math.Exp(shift * (0.5 - (t / seconds)));
        double struck = 0;
        for (int k = 0; k < 30; k++)
        {
            shift = (least + most) / 2;
            double sum = 0;
            double blow = 0;
            const int steps = 400;
            double dt = seconds / steps;
            for (int i = 0; i < steps; i++)
            {
                double t = (i + 0.5) * dt;
                sum += dt * Shape(t);
                blow += dt * Bumps.Beta(t / impactS, first, 1.3);
            }

            struck = impactPart * gain / blow;
            amplitude = (1 - impactPart) * gain / sum;
            double v = v0;
            double x = x0;
            for (int i = 0; i < steps; i++)
            {
                double t = (i + 0.5) * dt;
                double a = (amplitude * Shape(t)) + (struck * Bumps.Beta(t / impactS, first, 1.3)) - G;
                x += (v * dt) + (a * dt * dt / 2);
                v += a * dt;
            }

            (least, most) = x < aim ? (shift, most) : (least, shift);
        }

        double from = _motion.TouchDownsS[^1];
        double end = from + seconds;
        while (_motion.NowS < end)
        {
            double t = _motion.NowS + H - from;
            double force = (amplitude * Shape(t)) + (struck * Bumps.Beta(t / impactS, first, 1.3));
            if (force > MostParts * G || (t > 0.2 * seconds && t < 0.8 * seconds && force < 0.4 * G))
            {
                throw new InvalidOperationException("Nobody's legs do that.");
            }

            _motion.Step(t >= seconds ? 0 : M * force);
        }

        if (_motion.NowV < 0.5 || _motion.NowX is < -0.05 or > 0.25)
        {
            throw new InvalidOperationException("No such contact.");
        }

        _motion.Leave(end);
    }

    private void Fly() => _motion.Fly(_motion.NowX - _random.Uniform(-0.003, 0.03));

    /// <summary>What follows the last take-off.</summary>
    private void Finish(bool elsewhere)
    {
        if (elsewhere)
        {
            double end = _motion.NowS + _random.Uniform(1.5, 3);
            while (_motion.NowS < end)
            {
                _motion.Elsewhere();
            }

            return;
        }

        Fly();
        Land();
    }

    /// <summary>From the touch-down to standing.</summary>
    private void Land()
    {
        double depth = _random.Uniform(0.12, 0.32);
        Func<double, double, double> force = _random.Chance(0.4) ? Spring(depth) : Pulses(depth);
        double from = _motion.TouchDownsS[^1];
        while (_motion.NowV < 0)
        {
            double t = _motion.NowS + H - from;
            _motion.Step(Math.Max(force(t, _motion.NowX + (_motion.NowV * H)), 0));
            if (t > 1)
            {
                throw new InvalidOperationException("No such landing.");
            }
        }

        Settle(t => force(t - from, _motion.NowX), 0);
    }

    /// <summary>Force of an impact and of the legs giving way, N, by time since the touch-down.</summary>
    private Func<double, double, double> Pulses(double depthM)
    {
        double v = -_motion.NowV;
        double down = (depthM + _motion.NowX) / (_random.Uniform(0.42, 0.6) * v);
        double first = Edge;
        double second = _random.Uniform(0.9, 1.8);
        double blowS = Math.Min(_random.Uniform(0.04, 0.1), 0.7 * down);
        double wholeS = down * _random.Uniform(1.3, 1.7);
        double part = _random.Uniform(0.1, 0.45);
        double end = _random.Uniform(1, 1.6);
        double blow = 0;
        double sum = 0;
        const int steps = 500;
        for (int i = 0; i < steps; i++)
        {
            double t = (i + 0.5) * down / steps;
            blow += down / steps * Bumps.Beta(t / blowS, first, 1.4);
            sum += down / steps * Bumps.Beta(t / wholeS, second, end);
        }

        double gain = M * (v + (G * down));
        double a = part * gain / blow;
        double b = (1 - part) * gain / sum;
        return (t, _) => (a * Bumps.Beta(t / blowS, first, 1.4)) + (b * Bumps.Beta(t / wholeS, second, end));
    }

    /// <summary>A stiffening spring with a damper that grows with depth, N, by height.</summary>
    private Func<double, double, double> Spring(double depthM)
    {
        double power = Edge;
        double damping = _random.Uniform(0.05, 0.35);
        double x0 = _motion.NowX;
        double v0 = _motion.NowV;
        double low = 0;
        double high = 0;
        double stiff = 0;
        for (int k = 0; k < 40; k++)
        {
            stiff = high == 0 ? W * 4 * Math.Pow(2, k) : (low + high) / 2;
            double x = x0;
            double v = v0;
            const double dt = 0.0005;
            while (v < 0 && x > x0 - 1)
            {
                double f = stiff * Math.Pow(Math.Max(x0 - x, 0), power) * (1 - (damping * v));
                double a = (f / M) - G;
                v += a * dt;
                x += v * dt;
            }

            if (x > -depthM)
            {
                high = stiff;
            }
            else
            {
                low = stiff;
            }
        }

        return (_, x) => stiff * Math.Pow(Math.Max(x0 - x, 0), power) * Math.Max(1 - (damping * _motion.NowV), 0);
    }

    /// <summary>A spring and damper take over from a landing and creep to a height of standing.</summary>
    private void Settle(Func<double, double> landing, double restM)
    {
        double off =
            _random.Chance(0.6) ? 0.002 * _random.Normal()
            : _random.Chance(_varied ? 0.85 : 1) ? 0.008 * _random.Normal()
            : _random.Uniform(-0.04, 0.04);
        double rest = restM + off;
        double low = _motion.NowX;
        double slow = _random.Uniform(0.15, 0.4);
        double slower = _random.Uniform(0.4, 1);
        double creep = _random.Chance(0.75) ? _random.Uniform(-0.015, 0.015) : 0;
        double own = 2 * Math.PI * _random.Uniform(0.9, 1.5);
        double damping = _random.Uniform(0.7, 1.1);
        double over = _random.Uniform(0.15, 0.3);
        double stepAt = _random.Chance(_varied ? 0.25 : 0.1) ? _random.Uniform(0.6, 1.1) : double.PositiveInfinity;
        double stepM = _random.Uniform(0.003, 0.012);
        double stepS = _random.Uniform(0.3, 0.5);
        double from = _motion.NowS;
        double end = from + After;
        while (_motion.NowS < end)
        {
            double now = _motion.NowS + H;
            double t = now - from;
            double fast = (low - rest - creep) * Math.Exp(-t / slow);
            double creeping = creep * Math.Exp(-t / slower);
            double target = rest + fast + creeping;
            double targetV = -(fast / slow) - (creeping / slower);
            if (t > stepAt && t < stepAt + stepS)
            {
                // A small step: up a little and down again.
                double phase = 2 * Math.PI * (t - stepAt) / stepS;
                target += stepM * (1 - Math.Cos(phase)) / 2;
                targetV += stepM * Math.PI * Math.Sin(phase) / stepS;
            }

            double a =
                _sway.Acceleration(now)
                - (own * own * (_motion.NowX - _sway.Position(now) - target))
                - (2 * damping * own * (_motion.NowV - _sway.Velocity(now) - targetV));
            double blend = Bumps.Smooth(t / over);
            double force = blend * (W + (M * a));
            force += blend < 1 ? (1 - blend) * landing(now) : 0;
            _motion.Step(Math.Max(force, LeastPart * W));
        }
    }

    private void SnapDown()
    {
        Stand(Before);
        double from = _motion.NowS;
        double depth = _random.Uniform(0.2, 0.4);
        double down = _random.Uniform(0.18, 0.28);
        double dip = _random.Uniform(0.75, 0.95);
        double flat = _random.Uniform(0.3, 0.8);
        while (_motion.NowS < from + down)
        {
            double s = Math.Min((_motion.NowS + H - from) / down, 1);
            double part = 1 - (dip * Arch(s, flat));
            _motion.Step(W * Math.Max(part, 0.03));
        }

        // Caught by a pulse that brings the body to rest, and held.
        double way = depth + _motion.NowX;
        if (way < 0.04)
        {
            throw new InvalidOperationException("No room to be caught.");
        }

        double seconds = way / (_random.Uniform(0.42, 0.55) * -_motion.NowV);
        double first = _random.Uniform(0.8, 1.6);
        double last = _random.Uniform(0.8, 2);
        double mean = Mean(s => Bumps.Beta(s * 0.85, first, last));
        double gain = M * -_motion.NowV / (mean * seconds);
        double caught = _motion.NowS;
        double Catch(double t) => W + (gain * Bumps.Beta((t - caught) / seconds * 0.85, first, last));
        while (_motion.NowV < 0 && _motion.NowS < caught + 1)
        {
            _motion.Step(Catch(_motion.NowS + H));
        }

        Settle(Catch, _motion.NowX + _random.Uniform(-0.02, 0.02));
    }

    /// <summary>Force of sway while a movement takes over from it, N.</summary>
    private double Fading(double nowS, double fromS) =>
        M * _sway.Acceleration(nowS) * (1 - Bumps.Smooth((nowS - fromS) / 0.15));

    /// <summary>Half a sine to a power; nothing at both ends.</summary>
    private static double Arch(double s, double power) => Math.Pow(Math.Max(Math.Sin(Math.PI * s), 0), power);

    private static double Mean(Func<double, double> shape)
    {
        double sum = 0;
        for (int i = 0; i < 500; i++)
        {
            sum += shape((i + 0.5) / 500);
        }

        return sum / 500;
    }
}
