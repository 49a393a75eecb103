using System.Buffers;
using Jumpwright.Quantities;

namespace Jumpwright.Trials;

/// <summary>
/// The motion of the centre of mass through one stay on the plate, flights included, from all that physics knows: force is
/// mass times acceleration plus weight; in flight the force is zero; while standing still the centre of mass does no more than
/// sway, before and after alike, and regains its height; the weight is the same throughout. Weight, velocity and position
/// follow by weighted least squares from every still stretch at once, so that neither a detected onset nor one restless
/// second carries the result. What the recording leaves open (is sway a motion, does the zero drift, is the standing height
/// the same) is weighed by its evidence, and stays in the doubt.
/// </summary>
internal sealed class FittedMotion : IDisposable
{
    private const double G = Gravity.MetresPerSecondSquared;
    private const int MostWindows = 5;

    /// <summary>Left out at an end of a still stretch that borders on movement, s.</summary>
    private const double TrimS = 0.15;

    private const double LeastSwayN = 0.3;

    /// <summary>A still stretch of this length makes its sway's variance twice as unsure as it seems, s (house estimate, held by validation).</summary>
    private const double ShortLookS = 1.2;

    /// <summary>Drift of a plate's zero, N/s: mostly none, in some plates a good deal (house estimate).</summary>
    private static readonly Likely[] Drifts = [new(0.01, 0.8), new(0.6, 0.2)];

    /// <summary>Standing heights before and after: mostly the same to a centimetre, seldom another posture, m (house estimate).</summary>
    private static readonly Likely[] SamePostures = [new(0.004, 0.45), new(0.02, 0.45), new(0.15, 0.1, Rare: true)];

    private static readonly Likely[] AnyPostures = [new(0.5, 1)];

    /// <summary>
    /// Nobody leaves the ground far from upright: the centre of mass at take-off lies this much above standing, m, give or take
    /// as much as any body and arm swing explain (Yamashita et al. 2020 and the open recording of check value X1: 0.136 m). A
    /// weak guard: it matters only where a short, restless still stretch knows next to nothing.
    /// </summary>
    private const double TakeOffRiseM = 0.10;

    private static readonly Likely[] TakeOffRises = [new(0.06, 1)];

    /// <summary>Nothing drifts faster, N/s, and no standing height is farther off, m: priors so wide that they say nothing.</summary>
    private const double AnyDriftNS = 20;

    private const double AnyPostureM = 5;

    /// <summary>Waves of the disturbance smaller than this are not taken from the force, N.</summary>
    private const double LeastWaveN = 0.1;

    private readonly double[] _force;
    private readonly double[] _impulse;
    private readonly double[] _moved;
    private readonly double[] _velocity;
    private readonly double[] _position;
    private readonly double _dt;
    private readonly double _noiseN;
    private readonly EmptyPlate _empty;
    private readonly List<Stretch> _windows;
    private readonly StayModel _model;
    private readonly double _edgeMS;
    private readonly List<int> _takeOffs = [];
    private MotionBeliefs _beliefs;

    private FittedMotion(
        ReadOnlySpan<double> forceN,
        double rateHz,
        Stretch samples,
        IReadOnlyList<Contact> contacts,
        IReadOnlyList<QuietStanding> windows,
        double noiseN,
        EmptyPlate empty,
        bool samePosture
    )
    {
        Samples = samples;
        _dt = 1 / rateHz;
        _noiseN = noiseN;
        _empty = empty;
        _windows = [.. windows.Select(w => w.Samples)];
        _force = ArrayPool<double>.Shared.Rent(samples.Length);
        _impulse = ArrayPool<double>.Shared.Rent(samples.Length);
        _moved = ArrayPool<double>.Shared.Rent(samples.Length);
        _velocity = ArrayPool<double>.Shared.Rent(samples.Length);
        _position = ArrayPool<double>.Shared.Rent(samples.Length);
        double steepest = ClearFlights(forceN, contacts);
        Accumulate();
        MassKg = windows.Sum(w => w.MeanN * w.Samples.Length) / windows.Sum(w => w.Samples.Length) / G;
        // A corner of the force between two samples hides up to a twelfth of its step, over one sample.
        _edgeMS = (steepest * _dt / 12 / MassKg) + 2e-4;
        _model = new StayModel(_windows, contacts, samples, _dt, MassKg, empty.MiddleSample, _impulse, _moved);
        _beliefs = Solve(windows);
        LetInTheUsual(samePosture);
        Integrate();
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

    /// <summary>Root mean square of slow force that may be no motion of the body, N, as far as it is believed.</summary>
    public double DisturbanceN => SwayN * Math.Sqrt(1 - _beliefs.MovesPart);

    /// <summary>Drift of the plate's zero that was found and corrected, N/s.</summary>
    public double DriftNS { get; private set; }

    /// <summary>True where the still stretches do not share one standing height, such as after a landing held crouched.</summary>
    public bool PostureChanged { get; private set; }

    /// <summary>Longest still stretch, s.</summary>
    public double LongestStillS { get; private init; }

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

        return new FittedMotion(forceN, rateHz, samples, contacts, windows, noiseN, empty, samePosture)
        {
            LongestStillS = quiet.Max(q => q.Samples.Length) / rateHz,
        };
    }

    public void Dispose()
    {
        ArrayPool<double>.Shared.Return(_force);
        ArrayPool<double>.Shared.Return(_impulse);
        ArrayPool<double>.Shared.Return(_moved);
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

    /// <summary>Standard uncertainty of the velocity at an instant, m/s, from weight, sway, drift and noise.</summary>
    public double VelocityUncertaintyAt(double sample)
    {
        Span<double> moving = stackalloc double[_model.Size];
        Span<double> still = stackalloc double[_model.Size];
        int i = Locate(sample).Index + Samples.From;
        _model.VelocityAt(moving, i, moves: true);
        _model.VelocityAt(still, i, moves: false);
        return PushMeasures.Quadrature(_beliefs.Tell(moving, still).Deviation, _edgeMS / 2);
    }

    /// <summary>Standard uncertainty of the displacement from standing at an instant, m.</summary>
    public double PositionUncertaintyAt(double sample)
    {
        Span<double> moving = stackalloc double[_model.Size];
        Span<double> still = stackalloc double[_model.Size];
        int i = Locate(sample).Index + Samples.From;
        _model.PositionAt(moving, i, moves: true);
        _model.PositionAt(still, i, moves: false);
        return _beliefs.Tell(moving, still).Deviation;
    }

    /// <summary>End of the last still stretch that lies before a sample of the recording, or −1.</summary>
    public int LastStillBefore(int sample)
    {
        int end = -1;
        foreach (Stretch window in _windows)
        {
            end = window.From < sample ? Math.Min(window.To, sample) : end;
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

    /// <summary>Takes the force over, nothing in flight; gives its steepest step after a touch-down, N.</summary>
    private double ClearFlights(ReadOnlySpan<double> forceN, IReadOnlyList<Contact> contacts)
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
            _takeOffs.Add(Math.Min(from, force.Length - 1) + Samples.From);
            for (int i = to; i < Math.Min(to + (int)(0.05 / _dt), force.Length); i++)
            {
                steepest = Math.Max(steepest, Math.Abs(force[i] - force[Math.Max(i - 1, 0)]));
            }
        }

        return steepest;
    }

    private void Accumulate()
    {
        ReadOnlySpan<double> force = ForceN;
        double half = _dt / 2;
        double sum = 0;
        double moved = 0;
        _impulse[0] = 0;
        _moved[0] = 0;
        for (int i = 1; i < force.Length; i++)
        {
            double before = sum;
            sum += (force[i - 1] + force[i]) * half;
            // Force straight between samples: its double integral is exact.
            moved += (before * _dt) + (((2 * force[i - 1]) + force[i]) * _dt * _dt / 6);
            _impulse[i] = sum;
            _moved[i] = moved;
        }
    }

    /// <summary>Solves for all unknowns under every hypothesis about sway.</summary>
    private MotionBeliefs Solve(IReadOnlyList<QuietStanding> windows)
    {
        StillBlocks[] blocks = [.. _windows.Select(w => StillBlocks.Of(ForceN, Samples.From, w, RateHz))];
        int block = Math.Max((int)Math.Round(0.05 / _dt), 1);
        double white = _noiseN * _noiseN / block;
        double variance = StillBlocks.Variance(blocks, white);
        SwayN = SwayLevel(blocks, variance);
        SymmetricSystem standing = Observe(blocks, variance);
        SymmetricSystem moving = Linked(standing.Copy(), moves: true);
        SymmetricSystem still = Linked(standing, moves: false);
        var beliefs = new List<MotionBelief>(SwayHypothesis.All.Length);
        foreach (SwayHypothesis sway in SwayHypothesis.All)
        {
            SymmetricSystem system = (sway.Moves ? moving : still).Copy();
            double precision = _model.AddPriors(system, sway, SwayN, _noiseN);
            beliefs.Add(MotionBelief.Of(sway, system, precision));
        }

        return MotionBeliefs.Of(beliefs);
    }

    /// <summary>What the still stretches and the empty plate say, whatever sway is.</summary>
    private SymmetricSystem Observe(StillBlocks[] blocks, double variance)
    {
        var system = new SymmetricSystem(_model.Size);
        for (int w = 0; w < blocks.Length; w++)
        {
            _model.AddBlocks(system, w, blocks[w], variance);
            if (w > 0)
            {
                system.AddPrior(StayModel.Posture(w), 1 / (AnyPostureM * AnyPostureM));
            }
        }

        // The zero's own slope, where it shows.
        double known = Math.Max(_empty.DriftUncertaintyNS, 0.02);
        Span<double> row = stackalloc double[system.Size];
        row.Clear();
        row[1] = 1;
        system.Add(row, _empty.DriftNS, 1 / (known * known));
        system.AddPrior(1, 1 / (AnyDriftNS * AnyDriftNS));
        return system;
    }

    /// <summary>The same with the motion between the still stretches.</summary>
    private SymmetricSystem Linked(SymmetricSystem system, bool moves)
    {
        for (int w = 0; w + 1 < _windows.Count; w++)
        {
            _model.AddLink(system, w, moves, _edgeMS);
        }

        return system;
    }

    /// <summary>What usually holds: no drift, one standing height, upright at take-off.</summary>
    private void LetInTheUsual(bool samePosture)
    {
        _beliefs = _beliefs.Given(_ => (Unit(1), 0), 0, Drifts);
        for (int w = 1; w < _windows.Count; w++)
        {
            int posture = StayModel.Posture(w);
            _beliefs = _beliefs.Given(_ => (Unit(posture), 0), 0, samePosture ? SamePostures : AnyPostures);
        }

        PostureChanged = samePosture && _beliefs.RarePart > 0.5;
        foreach (int takeOff in _takeOffs)
        {
            if (samePosture)
            {
                _beliefs = _beliefs.Given(
                    moves =>
                    {
                        double[] row = new double[_model.Size];
                        double atZero = _model.PositionAt(row, takeOff, moves);
                        return (row, atZero);
                    },
                    TakeOffRiseM,
                    TakeOffRises
                );
            }
        }
    }

    private double[] Unit(int unknown)
    {
        double[] row = new double[_model.Size];
        row[unknown] = 1;
        return row;
    }

    /// <summary>Root mean square of the sway's force, N, from what shows of it within the still stretches.</summary>
    private double SwayLevel(StillBlocks[] blocks, double blockVariance)
    {
        double seen = 0;
        double visible = 0;
        for (int w = 0; w < blocks.Length; w++)
        {
            double[] m = blocks[w].MeanN;
            double mean = m.Average();
            double variance = m.Sum(f => (f - mean) * (f - mean)) / m.Length;
            seen += m.Length * Math.Max(variance - blockVariance, 0);
            visible += m.Length * Sway.VisiblePart(_windows[w].Length * _dt);
        }

        // A short look at a slow thing sees it small as often as not.
        double seconds = _windows.Sum(w => w.Length) * _dt;
        return Math.Sqrt(((seen / visible) + (LeastSwayN * LeastSwayN)) * (1 + (ShortLookS / seconds)));
    }

    private void Integrate()
    {
        double[] unknowns = _beliefs.Mean();
        DriftNS = unknowns[1];
        _model.Correct(_force.AsSpan(0, Samples.Length), unknowns, _beliefs.MeanDisturbing(), LeastWaveN);
        Accumulate();
        double mass = MassKg * (1 + unknowns[0]);
        for (int w = 0; w < _windows.Count; w++)
        {
            Stretch window = _windows[w];
            int anchor = w == 0 ? window.To - 1 : window.From;
            double v0 = At(w, anchor, _model.VelocityIn);
            double x0 = At(w, anchor, _model.PositionIn);
            int at = anchor - Samples.From;
            int from = w == 0 ? 0 : at;
            int to = w + 1 < _windows.Count ? _windows[w + 1].From - Samples.From : Samples.Length;
            for (int i = from; i < to; i++)
            {
                double t = (i - at) * _dt;
                _velocity[i] = v0 + ((_impulse[i] - _impulse[at]) / mass) - (G * t);
                _position[i] = x0 + (v0 * t) + ((_moved[i] - _moved[at] - (_impulse[at] * t)) / mass) - (G * t * t / 2);
            }
        }

        Span<double> row = stackalloc double[_model.Size];
        row.Clear();
        row[0] = MassKg * G;
        WeightUncertaintyN = _beliefs.Tell(row, row).Deviation;
        MassKg = mass;
    }

    private delegate void RowIn(Span<double> row, int window, int sample, bool moves);

    /// <summary>Mean of what a still stretch says of one of its samples.</summary>
    private double At(int window, int sample, RowIn of)
    {
        Span<double> moving = stackalloc double[_model.Size];
        Span<double> still = stackalloc double[_model.Size];
        of(moving, window, sample, true);
        of(still, window, sample, false);
        return _beliefs.Tell(moving, still).Mean;
    }
}
