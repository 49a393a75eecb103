using System.Numerics;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using Jumpwright.Quantities;

namespace Jumpwright.Trials;

/// <summary>
/// The linear model of one stay: what velocity and position are at any instant, in terms of the unknowns. Those are the
/// weight's relative error; the drift of the plate's zero; for each still stretch the amplitudes of its slow force, cosines and
/// then sines, and its standing height against the first; for each that follows a landing the tail of that; and for each contact
/// between still stretches the mean of the white noise.
/// </summary>
internal sealed class StayModel
{
    private const double G = Gravity.MetresPerSecondSquared;
    private const int N = Sway.Waves;

    /// <summary>Index of the weight's relative error, and of the drift of the plate's zero, N/s.</summary>
    public const int Weight = 0;

    public const int Drift = 1;

    private const int OfWindow = (2 * N) + 1;

    private static readonly int Whole = Vector512<double>.Count;

    private readonly double[] _force;
    private readonly int _offset;
    private readonly int _end;
    private readonly double _dt;
    private readonly double _zeroSample;
    private readonly double[] _middles;
    private readonly Disturbance[] _gaps;
    private readonly int[] _constants;
    private readonly int[] _tails;

    /// <summary>Describes a stay.</summary>
    /// <param name="windows">Its still stretches.</param>
    /// <param name="middles">From which sample the waves of each are counted.</param>
    /// <param name="afterLanding">For each of them, whether a landing ends in it.</param>
    /// <param name="contacts">Its contacts.</param>
    /// <param name="samples">The stay.</param>
    /// <param name="dt">Seconds a sample.</param>
    /// <param name="massKg">First estimate of the mass.</param>
    /// <param name="zeroSample">When the plate's zero is known, a sample of the recording.</param>
    /// <param name="forceN">Force of the stay, nothing in flight, N.</param>
    public StayModel(
        IReadOnlyList<Stretch> windows,
        double[] middles,
        ReadOnlySpan<bool> afterLanding,
        IReadOnlyList<Contact> contacts,
        Stretch samples,
        double dt,
        double massKg,
        double zeroSample,
        double[] forceN
    )
    {
        Windows = windows;
        MassKg = massKg;
        _offset = samples.From;
        _end = samples.Length;
        _dt = dt;
        _zeroSample = zeroSample;
        _middles = middles;
        _force = forceN;
        _gaps = new Disturbance[windows.Count + 1];
        _constants = new int[windows.Count + 1];
        int next = First(windows.Count);
        _tails = new int[windows.Count];
        for (int w = 0; w < windows.Count; w++)
        {
            _tails[w] = afterLanding[w] ? next++ : -1;
        }

        int constants = next;
        for (int g = 0; g <= windows.Count; g++)
        {
            int from = g == 0 ? samples.From : windows[g - 1].To - 1;
            int to = g == windows.Count ? samples.To - 1 : windows[g].From;
            int origin = g == 0 ? windows[0].From : from;
            _gaps[g] = new Disturbance(Spans(contacts, from, to, origin));
            _constants[g] = next;
            next += _gaps[g].Contacts.Length;
        }

        FirstConstant = constants;
        Constants = next - constants;
        Size = (next + Whole - 1) / Whole * Whole;
    }

    public IReadOnlyList<Stretch> Windows { get; }

    public double MassKg { get; }

    /// <summary>Number of unknowns, filled up with noughts to whole vectors.</summary>
    public int Size { get; }

    /// <summary>The first of those that stand for the mean noise of a contact between still stretches.</summary>
    public int FirstConstant { get; }

    /// <summary>How many of those there are.</summary>
    public int Constants { get; }

    public static int First(int window) => 2 + (window * OfWindow);

    /// <summary>Standing height of a still stretch against the first; not used for the first itself.</summary>
    public static int Posture(int window) => First(window) + (2 * N);

    /// <summary>Force of the tail of the landing before a still stretch, where that begins, N; −1 where it follows none.</summary>
    public int Tail(int window) => _tails[window];

    /// <summary>Time of a still stretch's middle since the zero was known, s.</summary>
    public double MiddleTime(int window) => (_middles[window] - _zeroSample) * _dt;

    /// <summary>Variance of the mean noise of each contact between still stretches, N².</summary>
    /// <param name="noiseN">White noise of a sample, N.</param>
    /// <param name="variances">Receives them.</param>
    public void ConstantVariances(double noiseN, Span<double> variances)
    {
        int next = 0;
        foreach (Disturbance gap in _gaps)
        {
            foreach ((double fromS, double toS) in gap.Contacts)
            {
                variances[next++] = ((noiseN * noiseN * _dt) + 1e-8) / (toS - fromS);
            }
        }
    }

    /// <summary>That the velocity runs on to the next still stretch: derivatives of what is missing, m/s, and its value.</summary>
    public double VelocityLink(Span<double> row, int window, bool moves)
    {
        int to = Windows[window + 1].From;
        double arrived = Velocity(row, to, window, moves);
        Negate(row);
        AddVelocity(row, window + 1, to, 1, moves);
        return arrived;
    }

    /// <summary>The same of the position, m.</summary>
    public double PositionLink(Span<double> row, int window, bool moves)
    {
        int to = Windows[window + 1].From;
        double reached = Position(row, to, window, moves);
        Negate(row);
        AddPosition(row, window + 1, to, 1, moves);
        return reached;
    }

    /// <summary>Seconds between a still stretch and the next.</summary>
    public double LinkS(int window) => (Windows[window + 1].From - (Windows[window].To - 1)) * _dt;

    /// <summary>Velocity at a sample: value at zero unknowns, m/s, and its derivatives by them.</summary>
    public double VelocityAt(Span<double> row, int sample, bool moves) =>
        Velocity(row, sample, WindowOf(sample), moves);

    /// <summary>Displacement at a sample: value at zero unknowns, m, and its derivatives by them.</summary>
    public double PositionAt(Span<double> row, int sample, bool moves) =>
        Position(row, sample, WindowOf(sample), moves);

    /// <summary>Velocity within a still stretch: derivatives only, for at zero unknowns it is zero.</summary>
    public double VelocityIn(Span<double> row, int window, int sample, bool moves)
    {
        row.Clear();
        AddVelocity(row, window, sample, 1, moves);
        return 0;
    }

    /// <summary>Displacement within a still stretch: derivatives only.</summary>
    public double PositionIn(Span<double> row, int window, int sample, bool moves)
    {
        row.Clear();
        AddPosition(row, window, sample, 1, moves);
        return 0;
    }

    /// <summary>Takes from the force what is no push: drift, mean noise of each contact, and disturbance.</summary>
    /// <param name="unknowns">Mean of the unknowns.</param>
    /// <param name="disturbing">The part of it in which the waves disturb.</param>
    /// <param name="loaded">Where the plate is not empty, samples of the stay.</param>
    public void Correct(ReadOnlySpan<double> unknowns, ReadOnlySpan<double> disturbing, List<Stretch> loaded)
    {
        Span<double> force = _force.AsSpan(0, _end);
        double drift = unknowns[Drift] * _dt;
        foreach (Stretch contact in loaded)
        {
            SlowWaves.SubtractLine(
                force[contact.From..contact.To],
                drift * (contact.From + _offset - _zeroSample),
                drift
            );
        }

        for (int g = 0; g < _gaps.Length; g++)
        {
            int window = Math.Max(g - 1, 0);
            int origin = Origin(g) - _offset;
            for (int c = 0; c < _gaps[g].Contacts.Length; c++)
            {
                (double fromS, double toS) = _gaps[g].Contacts[c];
                int from = Math.Clamp(origin + (int)Math.Ceiling(fromS / _dt), 0, force.Length);
                int to = Math.Clamp(origin + (int)Math.Floor(toS / _dt) + 1, from, force.Length);
                double firstS = (from + _offset - _middles[window]) * _dt;
                SlowWaves.Subtract(
                    force[from..to],
                    firstS,
                    _dt,
                    disturbing.Slice(First(window), 2 * N),
                    unknowns[_constants[g] + c]
                );
            }
        }
    }

    /// <summary>The still stretch that an instant's motion is counted from.</summary>
    public int WindowOf(double sample)
    {
        int w = 0;
        while (w + 1 < Windows.Count && Windows[w + 1].From <= sample)
        {
            w++;
        }

        return w;
    }

    /// <summary>The end of it that faces the instant.</summary>
    private int AnchorOf(int window, double sample) =>
        sample < Windows[window].From
            ? Windows[window].From
            : Math.Min(Windows[window].To - 1, Math.Max((int)sample, Windows[window].From));

    private static void Negate(Span<double> row)
    {
        for (int a = 0; a < row.Length; a++)
        {
            row[a] = -row[a];
        }
    }

    private (double FromS, double ToS)[] Spans(IReadOnlyList<Contact> contacts, int from, int to, int origin)
    {
        var spans = new List<(double, double)>(contacts.Count);
        foreach (Contact contact in contacts)
        {
            double a = Math.Max(contact.TouchDown?.Sample ?? contact.Samples.From, from);
            double b = Math.Min(contact.TakeOff?.Sample ?? contact.Samples.To, to);
            if (b - a > 1)
            {
                spans.Add(((a - origin) * _dt, (b - origin) * _dt));
            }
        }

        return [.. spans];
    }

    private int Origin(int gap) => gap == 0 ? Windows[0].From : Windows[gap - 1].To - 1;

    private double Velocity(Span<double> row, int sample, int window, bool moves)
    {
        row.Clear();
        int anchor = AnchorOf(window, sample);
        AddVelocity(row, window, anchor, 1, moves);
        double t = (sample - anchor) * _dt;
        if (t == 0)
        {
            return 0;
        }

        return Made(row, anchor, sample, window, moves, moved: false) - (G * t);
    }

    private double Position(Span<double> row, int sample, int window, bool moves)
    {
        row.Clear();
        int anchor = AnchorOf(window, sample);
        AddPosition(row, window, anchor, 1, moves);
        double t = (sample - anchor) * _dt;
        if (t == 0)
        {
            return 0;
        }

        AddVelocity(row, window, anchor, t, moves);
        return Made(row, anchor, sample, window, moves, moved: true) - (G * t * t / 2);
    }

    /// <summary>
    /// What the force between two samples made of velocity, m/s, or moved, m, where nothing is unknown; what the unknowns took of it goes into
    /// the row.
    /// </summary>
    private double Made(Span<double> row, int anchor, int sample, int window, bool moves, bool moved)
    {
        double t = (sample - anchor) * _dt;
        int gap = t < 0 ? 0 : window + 1;
        Disturbance between = _gaps[gap];
        double made = One(ForceSums.Between(_force, anchor - _offset, sample - _offset, _dt));
        row[0] -= made;
        row[1] -= One(between.OfRamp((_zeroSample - anchor) * _dt, t));
        for (int c = 0; c < between.Contacts.Length; c++)
        {
            row[_constants[gap] + c] -= One(between.OfConstant(c, t));
        }

        if (!moves)
        {
            AddDisturbance(row, window, gap, anchor, t, moved);
        }

        return made;

        double One((double Impulse, double Moved) both) => (moved ? both.Moved : both.Impulse) / MassKg;
    }

    /// <summary>Takes off what the waves of a still stretch, gone on as a disturbance, made of velocity or position.</summary>
    private void AddDisturbance(Span<double> row, int window, int gap, int anchor, double t, bool moved)
    {
        Span<Vector<double>> ofCosines = Cosines(row, window);
        Span<Vector<double>> ofSines = Sines(row, window);
        ReadOnlySpan<Vector<double>> frequencies = MemoryMarshal.Cast<double, Vector<double>>(Sway.AngularFrequencies);
        double middle = (_middles[window] - anchor) * _dt;
        double perKg = 1 / MassKg;
        for (int j = 0; j < frequencies.Length; j++)
        {
            Vector<double> omega = frequencies[j];
            (Vector<double> c, Vector<double> s, Vector<double> cm, Vector<double> sm) = _gaps[gap].Of(omega, t);
            (Vector<double> cosine, Vector<double> sine) = moved ? (cm, sm) : (c, s);
            (Vector<double> sin, Vector<double> cos) = Vector.SinCos(omega * middle);
            ofCosines[j] -= ((cosine * cos) + (sine * sin)) * perKg;
            ofSines[j] -= ((sine * cos) - (cosine * sin)) * perKg;
        }
    }

    private void AddVelocity(Span<double> row, int window, int sample, double factor, bool moves)
    {
        if (_tails[window] is >= 0 and var tail)
        {
            row[tail] -= factor * LandingTail.FadesS * Left(window, sample) / MassKg;
        }

        if (!moves)
        {
            return;
        }

        Span<Vector<double>> ofCosines = Cosines(row, window);
        Span<Vector<double>> ofSines = Sines(row, window);
        ReadOnlySpan<Vector<double>> frequencies = MemoryMarshal.Cast<double, Vector<double>>(Sway.AngularFrequencies);
        double t = (sample - _middles[window]) * _dt;
        for (int j = 0; j < frequencies.Length; j++)
        {
            (Vector<double> sin, Vector<double> cos) = Vector.SinCos(frequencies[j] * t);
            Vector<double> f = new Vector<double>(factor) / (frequencies[j] * MassKg);
            ofCosines[j] += f * sin;
            ofSines[j] -= f * cos;
        }
    }

    private void AddPosition(Span<double> row, int window, int sample, double factor, bool moves)
    {
        if (window > 0)
        {
            row[Posture(window)] += factor;
        }

        if (_tails[window] is >= 0 and var tail)
        {
            row[tail] += factor * LandingTail.FadesS * LandingTail.FadesS * Left(window, sample) / MassKg;
        }

        if (!moves)
        {
            return;
        }

        Span<Vector<double>> ofCosines = Cosines(row, window);
        Span<Vector<double>> ofSines = Sines(row, window);
        ReadOnlySpan<Vector<double>> frequencies = MemoryMarshal.Cast<double, Vector<double>>(Sway.AngularFrequencies);
        double t = (sample - _middles[window]) * _dt;
        for (int j = 0; j < frequencies.Length; j++)
        {
            (Vector<double> sin, Vector<double> cos) = Vector.SinCos(frequencies[j] * t);
            Vector<double> f = new Vector<double>(factor) / (frequencies[j] * frequencies[j] * MassKg);
            ofCosines[j] -= f * cos;
            ofSines[j] -= f * sin;
        }
    }

    /// <summary>What is left of a landing's tail at a sample, part of what it was where the still stretch began.</summary>
    private double Left(int window, int sample) =>
        Math.Exp(-(sample - Windows[window].From) * _dt / LandingTail.FadesS);

    private static Span<Vector<double>> Cosines(Span<double> row, int window) =>
        MemoryMarshal.Cast<double, Vector<double>>(row.Slice(First(window), N));

    private static Span<Vector<double>> Sines(Span<double> row, int window) =>
        MemoryMarshal.Cast<double, Vector<double>>(row.Slice(First(window) + N, N));
}
