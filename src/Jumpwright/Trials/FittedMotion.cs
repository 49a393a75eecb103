using System.Buffers;
using Jumpwright.Quantities;

namespace Jumpwright.Trials;

/// <summary>
/// The motion of the centre of mass through one stay on the plate, flights included, from all that physics knows: force is
/// mass times acceleration plus weight; in flight the force is zero; while standing still the centre of mass does no more than
/// sway, before and after alike, and regains its height; the weight is the same throughout. Weight, velocity and position
/// follow by weighted least squares from every still stretch at once, so that neither a detected onset nor one restless
/// second carries the result.
/// </summary>
/// <remarks>
/// Unknowns: the weight's relative error; for each still stretch the amplitudes of its sway (see <see cref="Sway"/>); for each
/// further one its standing height against the first. Observations: mean force of short blocks of the still stretches; and from
/// each stretch to the next the change of velocity and of position that the force between them makes.
/// </remarks>
internal sealed class FittedMotion : IDisposable
{
    private const double G = Gravity.MetresPerSecondSquared;
    private const int Amplitudes = 2 * Sway.Waves;
    private const int MostWindows = 5;

    private const double BlockS = 0.05;

    /// <summary>Left out at an end of a still stretch that borders on movement, s.</summary>
    private const double TrimS = 0.15;

    private const double LeastSwayN = 0.5;

    /// <summary>What a block's mean may be off by beyond white noise and sway (hum, resolution), N.</summary>
    private const double BlockFloorN = 0.7;

    /// <summary>Two still stretches have the same standing height but for this, m.</summary>
    private const double SamePostureM = 0.03;

    /// <summary>Standing heights that differ by more than this and their doubt are different postures, m.</summary>
    private const double PostureShowsM = 0.02;

    private const double AnyPostureM = 0.5;

    /// <summary>Drift of a plate's zero: what may be, what counts as none, N/s, and from how many variances on it shows.</summary>
    private const double LooseDriftNS = 2;

    private const double TightDriftNS = 0.02;

    /// <summary>An empty plate that knows its own slope to this, N/s, may speak alone.</summary>
    private const double DriftSeenNS = 0.6;

    private const double DriftShowsAt = 2;
    private const double DriftAloneShowsAt = 9;

    /// <summary>
    /// Nobody leaves the ground far from upright: the centre of mass at take-off lies this much above standing, m, give or take
    /// as much as any body and arm swing explain (Yamashita et al. 2020 and the open recording of check value X1: 0.136 m). A
    /// weak guard: it matters only where a short, restless still stretch knows next to nothing.
    /// </summary>
    private const double TakeOffRiseM = 0.10;

    private const double TakeOffRiseDoubtM = 0.06;

    private readonly double[] _force;
    private readonly double[] _impulse;
    private readonly double[] _driftImpulse;
    private readonly double[] _velocity;
    private readonly double[] _position;
    private readonly double _dt;
    private readonly double _noiseN;
    private readonly List<QuietStanding> _windows;
    private readonly double[] _unknowns;
    private readonly List<int> _takeOffs = [];
    private readonly EmptyPlate _empty;
    private readonly List<(double[] Shared, double Variance)> _conditions = [];
    private SymmetricSystem _system;
    private double _linkVelocityU;

    private FittedMotion(Stretch samples, double rateHz, double noiseN, EmptyPlate empty, List<QuietStanding> windows)
    {
        Samples = samples;
        _dt = 1 / rateHz;
        _noiseN = noiseN;
        _empty = empty;
        _windows = windows;
        int size = 2 + (Amplitudes * windows.Count) + windows.Count - 1;
        _unknowns = new double[size];
        _system = new SymmetricSystem(size);
        _force = ArrayPool<double>.Shared.Rent(samples.Length);
        _impulse = ArrayPool<double>.Shared.Rent(samples.Length);
        _driftImpulse = ArrayPool<double>.Shared.Rent(samples.Length);
        _velocity = ArrayPool<double>.Shared.Rent(samples.Length);
        _position = ArrayPool<double>.Shared.Rent(samples.Length);
    }

    /// <summary>The stay.</summary>
    public Stretch Samples { get; }

    /// <summary>Mass of all that stands on the plate, kg.</summary>
    public double MassKg { get; private set; }

    /// <summary>Weight of all that stands on the plate, N.</summary>
    public double WeightN => MassKg * G;

    /// <summary>Standard uncertainty of the weight, N.</summary>
    public double WeightUncertaintyN { get; private set; }

    /// <summary>Root mean square of the sway's force, N.</summary>
    public double SwayN { get; private set; }

    /// <summary>Drift of the plate's zero that was found and corrected, N/s; 0 where none shows.</summary>
    public double DriftNS { get; private set; }

    /// <summary>True where the still stretches do not share one standing height, such as after a landing held crouched.</summary>
    public bool PostureChanged { get; private set; }

    /// <summary>Longest still stretch, s.</summary>
    public double LongestStillS { get; private set; }

    public double RateHz => 1 / _dt;

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
    /// <param name="empty">The plate's zero, with its own drift as far as it shows.</param>
    /// <param name="samePosture">False where the still stretches are held at heights that may differ (squat jump).</param>
    public static FittedMotion Fit(
        ReadOnlySpan<double> forceN,
        double rateHz,
        Stretch samples,
        IReadOnlyList<Contact> contacts,
        IReadOnlyList<QuietStanding> quiet,
        double noiseN,
        EmptyPlate empty,
        bool samePosture
    )
    {
        List<QuietStanding> windows = [.. quiet.Select(q => Trimmed(q, samples, rateHz))];
        while (windows.Count > MostWindows)
        {
            windows.Remove(windows.MinBy(w => w.Samples.Length));
        }

        var motion = new FittedMotion(samples, rateHz, noiseN, empty, windows)
        {
            LongestStillS = quiet.Max(q => q.Samples.Length) / rateHz,
        };
        motion.Prepare(forceN, contacts);
        motion.Solve(samePosture);
        motion.Integrate();
        return motion;
    }

    public void Dispose()
    {
        ArrayPool<double>.Shared.Return(_force);
        ArrayPool<double>.Shared.Return(_impulse);
        ArrayPool<double>.Shared.Return(_driftImpulse);
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
        (int w, int anchor) = Anchor(sample);
        Span<double> row = stackalloc double[_system.Size];
        row.Clear();
        AddVelocity(row, w, anchor, 1);
        int i = Locate(sample).Index;
        row[0] -= (_impulse[i] - _impulse[anchor - Samples.From]) / MassKg;
        row[1] -= (_driftImpulse[i] - _driftImpulse[anchor - Samples.From]) / MassKg;
        double seconds = Math.Abs(sample - anchor) * _dt;
        double noise = _noiseN * _noiseN * seconds * _dt / (MassKg * MassKg);
        return Math.Sqrt(Variance(row) + noise);
    }

    /// <summary>Standard uncertainty of the displacement from standing at an instant, m.</summary>
    public double PositionUncertaintyAt(double sample)
    {
        (int w, int anchor) = Anchor(sample);
        Span<double> row = stackalloc double[_system.Size];
        row.Clear();
        double seconds = (sample - anchor) * _dt;
        AddPosition(row, w, anchor, 1);
        AddVelocity(row, w, anchor, seconds);
        int from = anchor - Samples.From;
        int i = Locate(sample).Index;
        double byForce = _position[i] - _position[from] - (_velocity[from] * seconds) + (G * seconds * seconds / 2);
        row[0] -= byForce;
        row[1] -= DriftPosition(from, i) / MassKg;
        double noise = _noiseN * _noiseN * Math.Abs(seconds) * _dt / (MassKg * MassKg) * seconds * seconds / 3;
        return Math.Sqrt(Variance(row) + noise);
    }

    /// <summary>End of the last still stretch that lies before a sample of the recording, or −1.</summary>
    public int LastStillBefore(int sample)
    {
        int end = -1;
        foreach (QuietStanding window in _windows)
        {
            end = window.Samples.From < sample ? Math.Min(window.Samples.To, sample) : end;
        }

        return end;
    }

    private static QuietStanding Trimmed(QuietStanding quiet, Stretch stay, double rateHz)
    {
        int length = quiet.Samples.Length;
        int most = Math.Min((int)(TrimS * rateHz), (length - (int)(0.6 * rateHz)) / 2);
        int from = quiet.Samples.From <= stay.From + 2 ? 0 : Math.Max(most, 0);
        int to = quiet.Samples.To >= stay.To - 2 ? 0 : Math.Max(most, 0);
        return quiet with { Samples = new Stretch(quiet.Samples.From + from, quiet.Samples.To - to) };
    }

    private (int Index, double Part) Locate(double sample)
    {
        double local = Math.Clamp(sample - Samples.From, 0, Samples.Length - 1.000001);
        int i = (int)local;
        return (i, local - i);
    }

    /// <summary>The still stretch that an instant's motion is counted from, and the end of it that faces the instant.</summary>
    private (int Window, int Sample) Anchor(double sample)
    {
        int w = 0;
        while (w + 1 < _windows.Count && _windows[w + 1].Samples.From <= sample)
        {
            w++;
        }

        Stretch window = _windows[w].Samples;
        return sample < window.From
            ? (w, window.From)
            : (w, Math.Min(window.To - 1, Math.Max((int)sample, window.From)));
    }

    private void Prepare(ReadOnlySpan<double> forceN, IReadOnlyList<Contact> contacts)
    {
        Span<double> force = _force.AsSpan(0, Samples.Length);
        forceN[Samples.From..Samples.To].CopyTo(force);
        double steepest = 0;
        for (int k = 0; k + 1 < contacts.Count; k++)
        {
            int from = (int)Math.Ceiling(contacts[k].TakeOff?.Sample ?? contacts[k].Samples.To) - Samples.From;
            int to = (int)Math.Floor(contacts[k + 1].TouchDown?.Sample ?? contacts[k + 1].Samples.From) - Samples.From;
            from = Math.Clamp(from, 0, force.Length);
            to = Math.Clamp(to + 1, from, force.Length);
            force[from..to].Clear();
            _takeOffs.Add(from);
            for (int i = to; i < Math.Min(to + (int)(0.05 / _dt), force.Length); i++)
            {
                steepest = Math.Max(steepest, Math.Abs(force[i] - force[Math.Max(i - 1, 0)]));
            }
        }

        double drifted = 0;
        _driftImpulse[0] = 0;
        for (int i = 1; i < force.Length; i++)
        {
            drifted += force[i] == 0 ? 0 : (i + Samples.From - _empty.MiddleSample) * _dt * _dt;
            _driftImpulse[i] = drifted;
        }

        Accumulate();
        double weighted = 0;
        double total = 0;
        foreach (QuietStanding window in _windows)
        {
            weighted += window.MeanN * window.Samples.Length;
            total += window.Samples.Length;
        }

        MassKg = weighted / total / G;
        // A corner of the force between two samples hides up to a twelfth of its step, over one sample.
        _linkVelocityU = (steepest * _dt / 12 / MassKg) + 2e-4;
    }

    private void Accumulate()
    {
        ReadOnlySpan<double> force = ForceN;
        double half = _dt / 2;
        double sum = 0;
        _impulse[0] = 0;
        for (int i = 1; i < force.Length; i++)
        {
            sum += (force[i - 1] + force[i]) * half;
            _impulse[i] = sum;
        }
    }

    /// <summary>Double integral of time since the zero's own, between two indices of the stay.</summary>
    private double DriftPosition(int from, int to)
    {
        double sum = 0;
        int step = to < from ? -1 : 1;
        for (int i = from; i != to; i += step)
        {
            sum += step * (_driftImpulse[i] + _driftImpulse[i + step] - (2 * _driftImpulse[from])) * _dt / 2;
        }

        return sum;
    }

    private double Variance(ReadOnlySpan<double> row)
    {
        double variance = _system.Variance(row);
        foreach ((double[] shared, double of) in _conditions)
        {
            double part = Product(row, shared);
            variance -= part * part / of;
        }

        return Math.Max(variance, 0);
    }

    private static int First(int window) => 2 + (window * (Amplitudes + 1)) - (window > 0 ? 1 : 0);

    private static int Posture(int window) => First(window) + Amplitudes;

    /// <summary>Adds the derivative of the velocity at a sample of a still stretch by its sway's amplitudes.</summary>
    private void AddVelocity(Span<double> row, int window, int sample, double factor)
    {
        int first = First(window);
        double t = (sample - _windows[window].Samples.Middle) * _dt;
        ReadOnlySpan<double> frequencies = Sway.AngularFrequencies;
        for (int j = 0; j < frequencies.Length; j++)
        {
            (double sin, double cos) = Math.SinCos(frequencies[j] * t);
            row[first + (2 * j)] += factor * sin / (frequencies[j] * MassKg);
            row[first + (2 * j) + 1] -= factor * cos / (frequencies[j] * MassKg);
        }
    }

    /// <summary>The same of the position, its standing height included.</summary>
    private void AddPosition(Span<double> row, int window, int sample, double factor)
    {
        int first = First(window);
        double t = (sample - _windows[window].Samples.Middle) * _dt;
        ReadOnlySpan<double> frequencies = Sway.AngularFrequencies;
        for (int j = 0; j < frequencies.Length; j++)
        {
            (double sin, double cos) = Math.SinCos(frequencies[j] * t);
            double f = factor / (frequencies[j] * frequencies[j] * MassKg);
            row[first + (2 * j)] -= f * cos;
            row[first + (2 * j) + 1] -= f * sin;
        }

        if (window > 0)
        {
            row[Posture(window)] += factor;
        }
    }

    /// <summary>
    /// Solves for all unknowns. What usually holds (no drift, one standing height, upright at take-off) is let in only where
    /// the signal does not speak against it.
    /// </summary>
    private void Solve(bool samePosture)
    {
        _system = new SymmetricSystem(_unknowns.Length);
        Span<double> row = stackalloc double[_unknowns.Length];
        double weight = MassKg * G;
        SwayN = SwayLevel();
        double prior = 1 / (SwayN * SwayN * Sway.VariancePerWave);
        int block = Math.Max((int)Math.Round(BlockS / _dt), 1);
        double blockVariance = (_noiseN * _noiseN / block) + (BlockFloorN * BlockFloorN);
        for (int w = 0; w < _windows.Count; w++)
        {
            Stretch window = _windows[w].Samples;
            int first = First(w);
            for (int s = window.From; s + block <= window.To; s += block)
            {
                int i = s - Samples.From;
                double mean = 0;
                for (int k = i; k < i + block; k++)
                {
                    mean += _force[k];
                }

                mean /= block;
                row.Clear();
                row[0] = weight;
                double centre = s + ((block - 1) / 2.0);
                row[1] = (centre - _empty.MiddleSample) * _dt;
                double t = (centre - window.Middle) * _dt;
                ReadOnlySpan<double> frequencies = Sway.AngularFrequencies;
                for (int j = 0; j < frequencies.Length; j++)
                {
                    (double sin, double cos) = Math.SinCos(frequencies[j] * t);
                    row[first + (2 * j)] = cos;
                    row[first + (2 * j) + 1] = sin;
                }

                _system.Add(row, mean - weight, 1 / blockVariance);
            }

            for (int a = 0; a < Amplitudes; a++)
            {
                _system.AddPrior(first + a, prior);
            }

            if (w > 0)
            {
                _system.AddPrior(Posture(w), 1 / (AnyPostureM * AnyPostureM));
                Link(row, w - 1);
            }
        }

        // The zero's own slope, where it shows; a plate may drift, so little holds it otherwise.
        double known = Math.Max(_empty.DriftUncertaintyNS, 0.02);
        row.Clear();
        row[1] = 1;
        _system.Add(row, _empty.DriftNS, 1 / (known * known));
        _system.AddPrior(1, 1 / (LooseDriftNS * LooseDriftNS));

        _system.Solve().CopyTo(_unknowns, 0);
        _conditions.Clear();

        row.Clear();
        row[1] = 1;
        // The more the drift stands out of its own doubt, the less it is held at none.
        // Within one still stretch a drift and a slow sway look alike: then only the empty plate may tell.
        bool seen = _windows.Count > 1 || _empty.DriftUncertaintyNS < DriftSeenNS;
        double shows = _windows.Count > 1 ? DriftShowsAt : DriftAloneShowsAt;
        double excess = seen ? (_unknowns[1] * _unknowns[1]) - (shows * Variance(row)) : 0;
        Condition(row, 0, Math.Sqrt(Math.Max(excess, 0) + (TightDriftNS * TightDriftNS)), double.PositiveInfinity);
        for (int w = 1; w < _windows.Count && samePosture; w++)
        {
            row.Clear();
            row[Posture(w)] = 1;
            double apart = (2 * Math.Sqrt(Variance(row))) + PostureShowsM;
            PostureChanged |= !Condition(row, 0, SamePostureM, apart);
        }

        foreach (int takeOff in _takeOffs)
        {
            if (samePosture)
            {
                double free = UprightRow(row, takeOff);
                double apart = 2 * Math.Sqrt(Variance(row) + (TakeOffRiseDoubtM * TakeOffRiseDoubtM));
                Condition(row, TakeOffRiseM - free, TakeOffRiseDoubtM, apart);
            }
        }

        row.Clear();
        row[0] = weight;
        WeightUncertaintyN = Math.Sqrt(Variance(row));
    }

    /// <summary>Lets in that row · unknowns is a value, give or take; not where the unknowns are farther from it than that.</summary>
    private bool Condition(ReadOnlySpan<double> row, double value, double doubt, double shows)
    {
        double off = value - Product(row, _unknowns);
        if (Math.Abs(off) > shows)
        {
            return false;
        }

        double[] shared = _system.Covariances(row);
        foreach ((double[] before, double of) in _conditions)
        {
            double part = Product(row, before) / of;
            for (int a = 0; a < shared.Length; a++)
            {
                shared[a] -= part * before[a];
            }
        }

        double variance = Product(row, shared) + (doubt * doubt);
        for (int a = 0; a < shared.Length; a++)
        {
            _unknowns[a] += shared[a] * off / variance;
        }

        _conditions.Add((shared, variance));
        return true;
    }

    private static double Product(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        double sum = 0;
        for (int i = 0; i < a.Length; i++)
        {
            sum += a[i] * b[i];
        }

        return sum;
    }

    /// <summary>What the force between two still stretches makes of velocity and position.</summary>
    private void Link(Span<double> row, int w)
    {
        int from = _windows[w].Samples.To - 1;
        int to = _windows[w + 1].Samples.From;
        double seconds = (to - from) * _dt;
        int a = from - Samples.From;
        int b = to - Samples.From;
        double gained = (_impulse[b] - _impulse[a]) / MassKg;
        double moved = 0;
        for (int i = a + 1; i <= b; i++)
        {
            moved += (_impulse[i - 1] + _impulse[i] - (2 * _impulse[a])) * _dt / 2;
        }

        moved /= MassKg;
        double noise = (_noiseN * _noiseN * seconds * _dt / (MassKg * MassKg)) + (_linkVelocityU * _linkVelocityU);
        row.Clear();
        AddVelocity(row, w + 1, to, 1);
        AddVelocity(row, w, from, -1);
        row[0] += gained;
        row[1] += (_driftImpulse[b] - _driftImpulse[a]) / MassKg;
        _system.Add(row, gained - (G * seconds), 1 / noise);

        row.Clear();
        AddPosition(row, w + 1, to, 1);
        AddPosition(row, w, from, -1);
        AddVelocity(row, w, from, -seconds);
        row[0] += moved;
        row[1] += DriftPosition(a, b) / MassKg;
        _system.Add(row, moved - (G * seconds * seconds / 2), 1 / (noise * seconds * seconds / 3));
    }

    /// <summary>Derivatives of the position at a take-off, an index of the stay; gives its value at zero unknowns.</summary>
    private double UprightRow(Span<double> row, int takeOff)
    {
        (int w, int anchor) = Anchor(takeOff + Samples.From);
        int a = anchor - Samples.From;
        double moved = 0;
        int step = takeOff < a ? -1 : 1;
        for (int i = a; i != takeOff; i += step)
        {
            moved += step * (_impulse[i] + _impulse[i + step] - (2 * _impulse[a])) * _dt / 2;
        }

        moved /= MassKg;
        double seconds = (takeOff - a) * _dt;
        row.Clear();
        AddPosition(row, w, anchor, 1);
        AddVelocity(row, w, anchor, seconds);
        row[0] -= moved;
        row[1] -= DriftPosition(a, takeOff) / MassKg;
        return moved - (G * seconds * seconds / 2);
    }

    /// <summary>Root mean square of the sway's force, N, from what shows of it within the still stretches.</summary>
    private double SwayLevel()
    {
        double seen = 0;
        double visible = 0;
        int block = Math.Max((int)Math.Round(BlockS / _dt), 1);
        foreach (QuietStanding window in _windows)
        {
            int count = window.Samples.Length / block;
            double sum = 0;
            double squares = 0;
            for (int k = 0; k < count; k++)
            {
                double mean = 0;
                int start = window.Samples.From - Samples.From + (k * block);
                for (int i = start; i < start + block; i++)
                {
                    mean += _force[i];
                }

                mean = (mean / block) - window.MeanN;
                sum += mean;
                squares += mean * mean;
            }

            double variance = Math.Max((squares - (sum * sum / count)) / count, 0) - (_noiseN * _noiseN / block);
            seen += count * Math.Max(variance, 0);
            visible += count * Sway.VisiblePart(window.Samples.Length * _dt);
        }

        return Math.Sqrt((seen / visible) + (LeastSwayN * LeastSwayN));
    }

    private void Integrate()
    {
        double mass = MassKg * (1 + _unknowns[0]);
        DriftNS = _unknowns[1];
        if (Math.Abs(DriftNS) > 0)
        {
            for (int i = 0; i < Samples.Length; i++)
            {
                _force[i] -= _force[i] == 0 ? 0 : DriftNS * (i + Samples.From - _empty.MiddleSample) * _dt;
            }

            Accumulate();
        }

        Span<double> row = stackalloc double[_unknowns.Length];
        Span<double> velocity = _velocity.AsSpan(0, Samples.Length);
        Span<double> position = _position.AsSpan(0, Samples.Length);
        for (int w = 0; w < _windows.Count; w++)
        {
            int anchor = w == 0 ? _windows[0].Samples.To - 1 : _windows[w].Samples.From;
            row.Clear();
            AddVelocity(row, w, anchor, 1);
            double v0 = Product(row, _unknowns);
            row.Clear();
            AddPosition(row, w, anchor, 1);
            double x0 = Product(row, _unknowns);
            int at = anchor - Samples.From;
            int end = w + 1 < _windows.Count ? _windows[w + 1].Samples.From - Samples.From : Samples.Length;
            velocity[at] = v0;
            position[at] = x0;
            for (int i = at + 1; i < end; i++)
            {
                double t = (i - at) * _dt;
                velocity[i] = v0 + ((_impulse[i] - _impulse[at]) / mass) - (G * t);
                position[i] = position[i - 1] + ((velocity[i - 1] + velocity[i]) * _dt / 2);
            }

            if (w == 0)
            {
                for (int i = at - 1; i >= 0; i--)
                {
                    double t = (i - at) * _dt;
                    velocity[i] = v0 + ((_impulse[i] - _impulse[at]) / mass) - (G * t);
                    position[i] = position[i + 1] - ((velocity[i + 1] + velocity[i]) * _dt / 2);
                }
            }
        }

        MassKg = mass;
    }
}
