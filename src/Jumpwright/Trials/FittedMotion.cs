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

    /// <summary>
    /// Seldom somebody moves at an end of a still stretch in a way that is no sway, about as fast as this, m/s (house estimate,
    /// held by validation); the stretches then say little of each other.
    /// </summary>
    private const double RestlessMS = 0.03;

    private const double Restless = 0.01;

    /// <summary>A still stretch of this length makes its sway's variance twice as unsure as it seems, s (house estimate, held by validation).</summary>
    private const double ShortLookS = 1.2;

    /// <summary>Drift of a plate's zero, N/s: mostly none, in some plates a good deal (house estimate).</summary>
    private static readonly Likely[] Drifts = [new(0.01, 0.6), new(0.15, 0.15), new(0.5, 0.23), new(5, 0.02)];

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

    private readonly double[] _force;
    private readonly double[] _velocity;
    private readonly double[] _position;
    private readonly double _dt;
    private readonly double _noiseN;
    private readonly EmptyPlate _empty;
    private readonly Scratch _scratch = new();
    private readonly List<Stretch> _windows;
    private readonly List<Stretch> _swaying;
    private readonly StayModel _model;
    private readonly double _edgeMS;
    private readonly List<int> _takeOffs = [];
    private readonly List<Stretch> _loaded = [];
    private readonly List<(int Sample, Believed Velocity)> _told = [];
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
        _swaying = [.. windows.Select(w => w.Swaying ?? w.Samples)];
        _force = ArrayPool<double>.Shared.Rent(samples.Length);
        _velocity = ArrayPool<double>.Shared.Rent(samples.Length);
        _position = ArrayPool<double>.Shared.Rent(samples.Length);
        double steepest = ClearFlights(forceN, contacts);
        MassKg = windows.Sum(w => w.MeanN * w.Samples.Length) / windows.Sum(w => w.Samples.Length) / G;
        // A corner of the force between two samples hides up to a twelfth of its step, over one sample.
        _edgeMS = (steepest * _dt / 12 / MassKg) + 2e-4;
        StillBlocks[] blocks = [.. _windows.Select(w => StillBlocks.Of(ForceN, samples.From, w, rateHz))];
        double[] middles = [.. blocks.Select(b => b.MiddleSample)];
        _model = new StayModel(
            _windows,
            middles,
            [.. windows.Select(w => w.Swaying is not null)],
            contacts,
            samples,
            _dt,
            MassKg,
            empty.MiddleSample,
            _force
        );
        _beliefs = Standing(blocks);
        LinkStretches();
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
    public double DisturbanceN => SwayN * Math.Sqrt(Math.Max(1 - _beliefs.MovesPart, 0));

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
        List<QuietStanding> windows = [];
        foreach (QuietStanding still in quiet)
        {
            windows.Add(Settled(forceN, Trimmed(still, samples, rateHz), windows, contacts, rateHz));
        }

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
        ArrayPool<double>.Shared.Return(_velocity);
        ArrayPool<double>.Shared.Return(_position);
        _scratch.Dispose();
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
    public double VelocityUncertaintyAt(double sample) => VelocityBelievedAt(sample).StandardUncertainty(EdgeMS);

    /// <summary>What errs of a velocity besides, m/s: corners of the force between samples.</summary>
    public double EdgeMS => _edgeMS / 2;

    /// <summary>What is believed of the velocity at an instant, m/s, round the value given for it.</summary>
    public Believed VelocityBelievedAt(double sample)
    {
        int i = Locate(sample).Index + Samples.From;
        foreach ((int told, Believed velocity) in _told)
        {
            if (told == i)
            {
                return velocity;
            }
        }

        Believed now = _beliefs.Tell((row, moves) => _model.VelocityAt(row, i, moves));
        _told.Add((i, now));
        return now;
    }

    /// <summary>Standard uncertainty of the displacement from standing at an instant, m.</summary>
    public double PositionUncertaintyAt(double sample)
    {
        int i = Locate(sample).Index + Samples.From;
        return _beliefs.Tell((row, moves) => _model.PositionAt(row, i, moves)).StandardUncertainty(0);
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

    /// <summary>The first still stretch after a touch-down, without the end of the landing.</summary>
    private static QuietStanding Settled(
        ReadOnlySpan<double> forceN,
        QuietStanding quiet,
        List<QuietStanding> before,
        IReadOnlyList<Contact> contacts,
        double rateHz
    )
    {
        Stretch still = quiet.Samples;
        foreach (Contact contact in contacts)
        {
            if (
                contact.TouchDown is not null
                && contact.Samples.From < still.From
                && still.From < contact.Samples.To
                && (before.Count == 0 || before[^1].Samples.From < contact.Samples.From)
            )
            {
                (int tail, int swings) = Settling.Samples(forceN[still.From..still.To], rateHz);
                return quiet with
                {
                    Samples = still with { From = still.From + tail },
                    Swaying = still with { From = still.From + swings },
                };
            }
        }

        return quiet;
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
        int landed = 0;
        for (int k = 0; k + 1 < contacts.Count; k++)
        {
            int from = (int)Math.Ceiling(contacts[k].TakeOff?.Sample ?? contacts[k].Samples.To) - Samples.From;
            int to = (int)Math.Floor(contacts[k + 1].TouchDown?.Sample ?? contacts[k + 1].Samples.From) - Samples.From;
            from = Math.Clamp(from, 0, force.Length);
            to = Math.Clamp(to + 1, from, force.Length);
            force[from..to].Clear();
            _loaded.Add(new Stretch(landed, from));
            landed = to;
            _takeOffs.Add(Math.Min(from, force.Length - 1) + Samples.From);
            for (int i = to; i < Math.Min(to + (int)(0.05 / _dt), force.Length); i++)
            {
                steepest = Math.Max(steepest, Math.Abs(force[i] - force[Math.Max(i - 1, 0)]));
            }
        }

        _loaded.Add(new Stretch(landed, force.Length));
        return steepest;
    }

    /// <summary>What the still stretches and the empty plate say, for every size of sway.</summary>
    private MotionBeliefs Standing(StillBlocks[] blocks)
    {
        double white = _noiseN * _noiseN / blocks[0].BlockSamples;
        double variance = StillBlocks.Variance(blocks, white);
        SwayN = SwayLevel(blocks, variance);
        StillEquations[] equations = [.. blocks.Select(b => StillEquations.Of(b, _dt, WeightN, _scratch))];
        LandingTail[] tails =
        [
            .. Enumerable
                .Range(0, blocks.Length)
                .Where(w => _model.Tail(w) >= 0)
                .Select(w => LandingTail.Of(w, blocks[w], _windows[w].From, _dt, WeightN, _scratch)),
        ];
        var sizes = new StandingSolution[SwayHypothesis.Scales.Length];
        for (int k = 0; k < sizes.Length; k++)
        {
            double sway = SwayN * SwayHypothesis.Scales[k];
            sizes[k] = new StandingSolution(_model, equations, tails, variance, _empty, sway, _noiseN, k, _scratch);
        }

        return MotionBeliefs.Of(sizes, _scratch);
    }

    /// <summary>Lets in that the motion runs on from one still stretch to the next.</summary>
    private void LinkStretches()
    {
        for (int w = 0; w + 1 < _windows.Count; w++)
        {
            int window = w;
            double edgeM = _edgeMS * _model.LinkS(w) / Math.Sqrt(3);
            _beliefs = _beliefs
                .Given(
                    (row, moves) => -_model.VelocityLink(row, window, moves),
                    0,
                    [new(_edgeMS, 1 - Restless), new(RestlessMS, Restless)]
                )
                .Given(
                    (row, moves) => -_model.PositionLink(row, window, moves),
                    0,
                    [new(edgeM, 1 - Restless), new(RestlessMS * _model.LinkS(w), Restless)]
                );
        }
    }

    /// <summary>What usually holds: no drift, one standing height, upright at take-off.</summary>
    private void LetInTheUsual(bool samePosture)
    {
        _beliefs = _beliefs.Given((row, _) => Unit(row, StayModel.Drift), 0, Drifts);
        for (int w = 1; w < _windows.Count; w++)
        {
            int posture = StayModel.Posture(w);
            _beliefs = _beliefs.Given((row, _) => Unit(row, posture), 0, samePosture ? SamePostures : AnyPostures);
        }

        PostureChanged = samePosture && _beliefs.RarePart > 0.5;
        foreach (int takeOff in _takeOffs)
        {
            if (samePosture)
            {
                _beliefs = _beliefs.Given(
                    (row, moves) => _model.PositionAt(row, takeOff, moves),
                    TakeOffRiseM,
                    TakeOffRises
                );
            }
        }
    }

    private static double Unit(Span<double> row, int unknown)
    {
        row[unknown] = 1;
        return 0;
    }

    /// <summary>Root mean square of the sway's force, N, from what shows of it within the still stretches.</summary>
    private double SwayLevel(StillBlocks[] blocks, double blockVariance)
    {
        double seen = 0;
        double visible = 0;
        for (int w = 0; w < blocks.Length; w++)
        {
            Stretch swaying = _swaying[w];
            double[] m =
                swaying == _windows[w] ? blocks[w].MeanN : StillBlocks.Of(ForceN, Samples.From, swaying, 1 / _dt).MeanN;
            double mean = m.Average();
            double variance = m.Sum(f => (f - mean) * (f - mean)) / m.Length;
            seen += m.Length * Math.Max(variance - blockVariance, 0);
            visible += m.Length * Sway.VisiblePart(swaying.Length * _dt);
        }

        // A short look at a slow thing sees it small as often as not.
        double seconds = _windows.Sum(w => w.Length) * _dt;
        return Math.Sqrt(((seen / visible) + (LeastSwayN * LeastSwayN)) * (1 + (ShortLookS / seconds)));
    }

    private void Integrate()
    {
        double[] unknowns = _beliefs.Mean();
        DriftNS = unknowns[StayModel.Drift];
        WeightUncertaintyN = WeightN * _beliefs.Tell((row, _) => Unit(row, StayModel.Weight)).StandardUncertainty(0);
        double mass = MassKg * (1 + unknowns[StayModel.Weight]);
        var enters = new (double V, double X)[_windows.Count];
        var leaves = new (double V, double X)[_windows.Count];
        for (int w = 0; w < _windows.Count; w++)
        {
            enters[w] = StateIn(w, _windows[w].From);
            leaves[w] = StateIn(w, _windows[w].To - 1);
        }

        _model.Correct(unknowns, _beliefs.MeanDisturbing(), _loaded);
        MassKg = mass;
        for (int w = 0; w < _windows.Count; w++)
        {
            int from = _windows[w].From - Samples.From;
            int to = _windows[w].To - 1 - Samples.From;
            (_velocity[from], _position[from]) = enters[w];
            Forwards(from, to + 1);
            LeadTo(from, to, leaves[w]);
            Forwards(to, w + 1 < _windows.Count ? _windows[w + 1].From - Samples.From : Samples.Length);
        }

        Backwards(_windows[0].From - Samples.From);
    }

    /// <summary>Velocity, m/s, and displacement, m, that are believed at a sample of a still stretch.</summary>
    private (double V, double X) StateIn(int window, int sample) =>
        (
            _beliefs.MeanOf((row, moves) => _model.VelocityIn(row, window, sample, moves)),
            _beliefs.MeanOf((row, moves) => _model.PositionIn(row, window, sample, moves))
        );

    /// <summary>
    /// Slow force that is no motion adds up through a still stretch as if it were one, while whoever stands still at its beginning
    /// does so at its end. What the sum is off there is spread over the stretch, so that the motion on either side of it counts from the end that faces it.
    /// </summary>
    private void LeadTo(int from, int to, (double V, double X) end)
    {
        int samples = to - from;
        if (samples == 0)
        {
            return;
        }

        Motions.AddRising(_velocity.AsSpan(from, samples + 1), (end.V - _velocity[to]) / samples);
        Motions.AddRising(_position.AsSpan(from, samples + 1), (end.X - _position[to]) / samples);
    }

    private void Forwards(int from, int to) =>
        Motions.Integrate(
            _force.AsSpan(from, to - from),
            _velocity.AsSpan(from, to - from),
            _position.AsSpan(from, to - from),
            1 / MassKg,
            _dt
        );

    private void Backwards(int from) =>
        Motions.IntegrateBack(
            _force.AsSpan(0, from + 1),
            _velocity.AsSpan(0, from + 1),
            _position.AsSpan(0, from + 1),
            1 / MassKg,
            _dt
        );
}
