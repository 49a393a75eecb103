using System.Buffers;
using Jumpwright.Quantities;

namespace Jumpwright.Trials;

/// <summary>
/// The motion of the centre of mass through one stay on the plate, flights included, from all that physics knows: force is
/// mass times acceleration plus weight; in flight the force is zero; while standing still the velocity is zero and the
/// position stays, but for sway, before and after alike; the weight is the same throughout. Weight, velocity and position
/// follow by weighted least squares from every still stretch at once, so that neither a detected onset nor one restless
/// second carries the result.
/// </summary>
internal sealed class Motion : IDisposable
{
    private const double G = Gravity.MetresPerSecondSquared;

    /// <summary>Sway seen as force turns into velocity and position through these angular frequencies, rad/s (0.7 and 0.5 Hz).</summary>
    private const double VelocityFrequency = 4.4;

    private const double PositionFrequency = 3.1;

    /// <summary>Neighbouring instants of sway tell the same story for this long, s.</summary>
    private const double SwayMemoryS = 0.25;

    private const double LeastSwayN = 0.6;

    /// <summary>Two still stretches have the same standing height but for this, m.</summary>
    private const double SamePostureM = 0.02;

    private const double AnyPostureM = 0.5;
    private const int MostWindows = 6;

    private readonly double[] _force;
    private readonly double[] _impulse;
    private readonly double[] _velocity;
    private readonly double[] _position;
    private readonly double[] _covariance;
    private readonly int _size;
    private readonly double _dt;
    private readonly double _origin;
    private readonly double _noiseN;
    private readonly List<QuietStanding> _windows;
    private double _originImpulse;

    private Motion(Stretch samples, double rateHz, double noiseN, List<QuietStanding> windows)
    {
        Samples = samples;
        _dt = 1 / rateHz;
        _noiseN = noiseN;
        _windows = windows;
        _origin = windows[0].Samples.Middle;
        _size = 3 + windows.Count - 1;
        _force = ArrayPool<double>.Shared.Rent(samples.Length);
        _impulse = ArrayPool<double>.Shared.Rent(samples.Length);
        _velocity = ArrayPool<double>.Shared.Rent(samples.Length);
        _position = ArrayPool<double>.Shared.Rent(samples.Length);
        _covariance = new double[_size * _size];
    }

    /// <summary>The stay.</summary>
    public Stretch Samples { get; }

    /// <summary>Mass of all that stands on the plate, kg.</summary>
    public double MassKg { get; private set; }

    /// <summary>Weight of all that stands on the plate, N.</summary>
    public double WeightN => MassKg * G;

    /// <summary>Standard uncertainty of the weight, N.</summary>
    public double WeightUncertaintyN => Math.Sqrt(_covariance[0]) * WeightN;

    /// <summary>True where the still stretches do not share one standing height, such as after a landing held crouched.</summary>
    public bool PostureChanged { get; private set; }

    /// <summary>Net of zero and, in flight, nothing, N; index 0 is the first sample of the stay.</summary>
    public ReadOnlySpan<double> ForceN => _force.AsSpan(0, Samples.Length);

    public ReadOnlySpan<double> VelocityMS => _velocity.AsSpan(0, Samples.Length);

    public ReadOnlySpan<double> PositionM => _position.AsSpan(0, Samples.Length);

    /// <summary>Fits the motion of one stay.</summary>
    /// <param name="forceN">Total force with the zero corrected, N, of the whole recording.</param>
    /// <param name="rateHz">Sampling rate, Hz.</param>
    /// <param name="samples">The stay.</param>
    /// <param name="contacts">Its contacts; between them the force counts as zero.</param>
    /// <param name="quiet">Its still stretches, at least one.</param>
    /// <param name="noiseN">White noise of a sample, N.</param>
    /// <param name="samePosture">False where the still stretches are held at heights that may differ (squat jump).</param>
    public static Motion Fit(
        ReadOnlySpan<double> forceN,
        double rateHz,
        Stretch samples,
        IReadOnlyList<Contact> contacts,
        IReadOnlyList<QuietStanding> quiet,
        double noiseN,
        bool samePosture
    )
    {
        List<QuietStanding> windows = [.. quiet];
        while (windows.Count > MostWindows)
        {
            windows.Remove(windows.MinBy(w => w.Samples.Length));
        }

        var motion = new Motion(samples, rateHz, noiseN, windows);
        motion.Prepare(forceN, contacts);
        double posture = samePosture ? SamePostureM : AnyPostureM;
        if (motion.Solve(posture) > 3 * posture && samePosture)
        {
            motion.Solve(AnyPostureM);
            motion.PostureChanged = true;
        }

        motion.Integrate();
        return motion;
    }

    public void Dispose()
    {
        ArrayPool<double>.Shared.Return(_force);
        ArrayPool<double>.Shared.Return(_impulse);
        ArrayPool<double>.Shared.Return(_velocity);
        ArrayPool<double>.Shared.Return(_position);
    }

    /// <summary>Velocity at an instant of the recording, m/s, up positive.</summary>
    public double VelocityAt(double sample)
    {
        (int i, double part) = Locate(sample);
        // Force is taken as straight between samples.
        double tail = ((_force[i] * part) + ((_force[i + 1] - _force[i]) * part * part / 2)) * _dt;
        return _velocity[i] + (tail / MassKg) - (G * part * _dt);
    }

    /// <summary>Displacement from the first still stretch at an instant, m, up positive.</summary>
    public double PositionAt(double sample)
    {
        (int i, double part) = Locate(sample);
        double acceleration = (_force[i] / MassKg) - G;
        double t = part * _dt;
        return _position[i] + (_velocity[i] * t) + (acceleration * t * t / 2);
    }

    /// <summary>Standard uncertainty of the velocity at an instant, m/s, from weight, sway and noise.</summary>
    public double VelocityUncertaintyAt(double sample)
    {
        Span<double> row = stackalloc double[_size];
        (int i, _) = Locate(sample);
        row.Clear();
        row[0] = (_impulse[i] - _originImpulse) / MassKg;
        row[1] = 1;
        return Math.Sqrt(Propagate(row) + NoiseVariance(sample));
    }

    /// <summary>Standard uncertainty of the displacement from standing at an instant, m.</summary>
    public double PositionUncertaintyAt(double sample)
    {
        Span<double> row = stackalloc double[_size];
        row.Clear();
        (int i, _) = Locate(sample);
        double t = (sample - _origin) * _dt;
        double doubleImpulse = _position[i] - _x0 - (_v0 * t) + (G * t * t / 2);
        row[0] = doubleImpulse;
        row[1] = t;
        row[2] = 1;
        double nearest = NearestS(sample);
        return Math.Sqrt(Propagate(row) + (NoiseVariance(sample) * nearest * nearest / 3));
    }

    private double _v0;
    private double _x0;

    private (int Index, double Part) Locate(double sample)
    {
        double local = Math.Clamp(sample - Samples.From, 0, Samples.Length - 1.000001);
        int i = (int)local;
        return (i, local - i);
    }

    private double NearestS(double sample)
    {
        double nearest = double.PositiveInfinity;
        foreach (QuietStanding window in _windows)
        {
            nearest = Math.Min(nearest, Math.Abs(window.Samples.Middle - sample) * _dt);
        }

        return nearest;
    }

    private double NoiseVariance(double sample) => _noiseN * _noiseN * NearestS(sample) * _dt / (MassKg * MassKg);

    private double Propagate(ReadOnlySpan<double> row)
    {
        double sum = 0;
        for (int a = 0; a < _size; a++)
        {
            for (int b = 0; b < _size; b++)
            {
                sum += row[a] * _covariance[(a * _size) + b] * row[b];
            }
        }

        return Math.Max(sum, 0);
    }

    private void Prepare(ReadOnlySpan<double> forceN, IReadOnlyList<Contact> contacts)
    {
        Span<double> force = _force.AsSpan(0, Samples.Length);
        forceN[Samples.From..Samples.To].CopyTo(force);
        for (int k = 0; k + 1 < contacts.Count; k++)
        {
            int from = (int)Math.Ceiling(contacts[k].TakeOff?.Sample ?? contacts[k].Samples.To) - Samples.From;
            int to = (int)Math.Floor(contacts[k + 1].TouchDown?.Sample ?? contacts[k + 1].Samples.From) - Samples.From;
            if (to >= from)
            {
                force[Math.Max(from, 0)..Math.Min(to + 1, force.Length)].Clear();
            }
        }

        Span<double> impulse = _impulse.AsSpan(0, Samples.Length);
        impulse[0] = 0;
        double half = _dt / 2;
        double sum = 0;
        for (int i = 1; i < force.Length; i++)
        {
            sum += (force[i - 1] + force[i]) * half;
            impulse[i] = sum;
        }

        (int at, double part) = Locate(_origin);
        _originImpulse = impulse[at] + (part * (impulse[Math.Min(at + 1, impulse.Length - 1)] - impulse[at]));

        double weighted = 0;
        double total = 0;
        foreach (QuietStanding window in _windows)
        {
            weighted += window.MeanN * window.Samples.Length;
            total += window.Samples.Length;
        }

        MassKg = weighted / total / G;
    }

    /// <summary>Solves for mass, velocity and position; returns the largest change of posture between still stretches, m.</summary>
    private double Solve(double postureM)
    {
        int n = _size;
        Span<double> normal = stackalloc double[n * n];
        Span<double> right = stackalloc double[n];
        Span<double> rowV = stackalloc double[n];
        Span<double> rowX = stackalloc double[n];
        normal.Clear();
        right.Clear();

        // Position of the motion with the mass so far, and nothing else, needs one pass over the stay.
        Span<double> drift = _position.AsSpan(0, Samples.Length);
        CumulativePosition(drift);

        int stride = Math.Max((int)(0.01 / _dt), 1);
        double memory = SwayMemoryS / (_dt * stride);
        for (int w = 0; w < _windows.Count; w++)
        {
            QuietStanding window = _windows[w];
            double sway = Math.Max(window.SwayN, LeastSwayN);
            double sv = sway / (MassKg * VelocityFrequency);
            double sx = sv / PositionFrequency;
            double weightV = 1 / (sv * sv * memory);
            double weightX = 1 / (sx * sx * memory);
            for (int s = window.Samples.From; s < window.Samples.To; s += stride)
            {
                int i = s - Samples.From;
                double t = (s - _origin) * _dt;
                double gained = (_impulse[i] - _originImpulse) / MassKg;
                double x = drift[i];
                rowV.Clear();
                rowV[0] = gained;
                rowV[1] = 1;
                Add(normal, right, rowV, -(gained - (G * t)), weightV);
                rowX.Clear();
                rowX[0] = x + (G * t * t / 2);
                rowX[1] = t;
                rowX[2] = 1;
                if (w > 0)
                {
                    rowX[2 + w] = -1;
                }

                Add(normal, right, rowX, -x, weightX);
            }

            if (w > 0)
            {
                normal[((2 + w) * n) + 2 + w] += 1 / (postureM * postureM);
            }
        }

        Invert(normal, n, _covariance);
        Span<double> solution = stackalloc double[n];
        for (int a = 0; a < n; a++)
        {
            double sum = 0;
            for (int b = 0; b < n; b++)
            {
                sum += _covariance[(a * n) + b] * right[b];
            }

            solution[a] = sum;
        }

        MassKg /= 1 + solution[0];
        _v0 = solution[1];
        _x0 = solution[2];
        double change = 0;
        for (int w = 1; w < _windows.Count; w++)
        {
            change = Math.Max(change, Math.Abs(solution[2 + w]));
        }

        return change;
    }

    /// <summary>Displacement since the origin for a start at rest there, m.</summary>
    private void CumulativePosition(Span<double> into)
    {
        int middle = Locate(_origin).Index;
        double inverse = 1 / MassKg;
        double previous = 0;
        double sum = 0;
        double atOrigin = 0;
        for (int i = 0; i < into.Length; i++)
        {
            double t = (i + Samples.From - _origin) * _dt;
            double v = ((_impulse[i] - _originImpulse) * inverse) - (G * t);
            sum += i == 0 ? 0 : (previous + v) * _dt / 2;
            into[i] = sum;
            previous = v;
            if (i == middle)
            {
                atOrigin = sum;
            }
        }

        for (int i = 0; i < into.Length; i++)
        {
            into[i] -= atOrigin;
        }
    }

    private void Integrate()
    {
        Span<double> velocity = _velocity.AsSpan(0, Samples.Length);
        double inverse = 1 / MassKg;
        for (int i = 0; i < velocity.Length; i++)
        {
            double t = (i + Samples.From - _origin) * _dt;
            velocity[i] = _v0 + ((_impulse[i] - _originImpulse) * inverse) - (G * t);
        }

        Span<double> position = _position.AsSpan(0, Samples.Length);
        int middle = Locate(_origin).Index;
        double sum = 0;
        position[0] = 0;
        for (int i = 1; i < position.Length; i++)
        {
            sum += (velocity[i - 1] + velocity[i]) * _dt / 2;
            position[i] = sum;
        }

        double shift = _x0 - position[middle];
        for (int i = 0; i < position.Length; i++)
        {
            position[i] += shift;
        }
    }

    private static void Add(
        Span<double> normal,
        Span<double> right,
        ReadOnlySpan<double> row,
        double value,
        double weight
    )
    {
        int n = row.Length;
        for (int a = 0; a < n; a++)
        {
            double wa = weight * row[a];
            if (wa == 0)
            {
                continue;
            }

            right[a] += wa * value;
            for (int b = 0; b < n; b++)
            {
                normal[(a * n) + b] += wa * row[b];
            }
        }
    }

    /// <summary>Inverse of a small symmetric positive matrix by Gauss–Jordan.</summary>
    private static void Invert(ReadOnlySpan<double> matrix, int n, Span<double> inverse)
    {
        Span<double> work = stackalloc double[n * n];
        matrix.CopyTo(work);
        inverse.Clear();
        for (int i = 0; i < n; i++)
        {
            inverse[(i * n) + i] = 1;
        }

        for (int c = 0; c < n; c++)
        {
            double pivot = work[(c * n) + c];
            for (int k = 0; k < n; k++)
            {
                work[(c * n) + k] /= pivot;
                inverse[(c * n) + k] /= pivot;
            }

            for (int r = 0; r < n; r++)
            {
                double factor = r == c ? 0 : work[(r * n) + c];
                if (factor == 0)
                {
                    continue;
                }

                for (int k = 0; k < n; k++)
                {
                    work[(r * n) + k] -= factor * work[(c * n) + k];
                    inverse[(r * n) + k] -= factor * inverse[(c * n) + k];
                }
            }
        }
    }
}
