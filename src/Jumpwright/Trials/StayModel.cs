using Jumpwright.Quantities;

namespace Jumpwright.Trials;

/// <summary>
/// The linear model of one stay: what velocity and position are at any instant, in terms of the unknowns. Those are the
/// weight's relative error; the drift of the plate's zero; for each still stretch the amplitudes of its slow force and, after
/// the first, its standing height; for each contact between still stretches the mean of the white noise; and last, for
/// hypotheses in which the slow force is no motion, the waves that go on between the still stretches.
/// </summary>
internal sealed class StayModel
{
    private const double G = Gravity.MetresPerSecondSquared;

    private readonly double[] _impulse;
    private readonly double[] _moved;
    private readonly int _offset;
    private readonly double _dt;
    private readonly double _zeroSample;
    private readonly Disturbance[] _gaps;
    private readonly int[] _constants;

    /// <summary>Describes a stay.</summary>
    /// <param name="windows">Its still stretches.</param>
    /// <param name="contacts">Its contacts.</param>
    /// <param name="samples">The stay.</param>
    /// <param name="dt">Seconds a sample.</param>
    /// <param name="massKg">First estimate of the mass.</param>
    /// <param name="zeroSample">When the plate's zero is known, a sample of the recording.</param>
    /// <param name="impulse">Impulse up to each sample of the stay, N s.</param>
    /// <param name="moved">Integral of that, N s².</param>
    public StayModel(
        IReadOnlyList<Stretch> windows,
        IReadOnlyList<Contact> contacts,
        Stretch samples,
        double dt,
        double massKg,
        double zeroSample,
        double[] impulse,
        double[] moved
    )
    {
        Windows = windows;
        MassKg = massKg;
        _offset = samples.From;
        _dt = dt;
        _zeroSample = zeroSample;
        _impulse = impulse;
        _moved = moved;
        _gaps = new Disturbance[windows.Count + 1];
        _constants = new int[windows.Count + 1];
        int next = 2 + (windows.Count * (Sway.Amplitudes + 1)) - 1;
        for (int g = 0; g <= windows.Count; g++)
        {
            int from = g == 0 ? samples.From : windows[g - 1].To - 1;
            int to = g == windows.Count ? samples.To - 1 : windows[g].From;
            int origin = g == 0 ? windows[0].From : from;
            _gaps[g] = new Disturbance([.. Spans(contacts, from, to, origin)]);
            _constants[g] = next;
            next += _gaps[g].Contacts.Length;
        }

        Size = next;
    }

    public IReadOnlyList<Stretch> Windows { get; }

    public double MassKg { get; }

    /// <summary>Number of unknowns.</summary>
    public int Size { get; }

    public static int First(int window) => 2 + (window * (Sway.Amplitudes + 1)) - (window > 0 ? 1 : 0);

    /// <summary>Standing height of a later still stretch against the first.</summary>
    public static int Posture(int window) => First(window) + Sway.Amplitudes;

    /// <summary>
    /// Adds what is known beforehand of the sizes of all unknowns but drift and standing heights; gives the logarithm of the
    /// product of those weights.
    /// </summary>
    public double AddPriors(SymmetricSystem system, SwayHypothesis sway, double swayN, double noiseN)
    {
        double[] variances = Sway.Variances(sway.Colour);
        double square = swayN * swayN * sway.Scale * sway.Scale;
        double log = 0;
        for (int w = 0; w < Windows.Count; w++)
        {
            log += AddWavePriors(system, First(w), variances, square);
        }

        for (int g = 0; g < _gaps.Length; g++)
        {
            (double FromS, double ToS)[] contacts = _gaps[g].Contacts;
            for (int c = 0; c < contacts.Length; c++)
            {
                double weight = (contacts[c].ToS - contacts[c].FromS) / ((noiseN * noiseN * _dt) + 1e-8);
                system.AddPrior(_constants[g] + c, weight);
                log += Math.Log(weight);
            }
        }

        return log;
    }

    /// <summary>Adds the block means of a still stretch.</summary>
    public void AddBlocks(SymmetricSystem system, int window, StillBlocks blocks, double variance)
    {
        Span<double> row = stackalloc double[system.Size];
        double weight = MassKg * G;
        int first = First(window);
        ReadOnlySpan<double> frequencies = Sway.AngularFrequencies;
        row.Clear();
        row[0] = weight;
        for (int k = 0; k < blocks.MeanN.Length; k++)
        {
            double centre = blocks.CentreSample[k];
            row[1] = (centre - _zeroSample) * _dt;
            double t = (centre - Windows[window].Middle) * _dt;
            for (int j = 0; j < frequencies.Length; j++)
            {
                (double sin, double cos) = Math.SinCos(frequencies[j] * t);
                row[first + (2 * j)] = cos;
                row[first + (2 * j) + 1] = sin;
            }

            system.Add(row, blocks.MeanN[k] - weight, 1 / variance);
        }
    }

    /// <summary>Adds that the motion runs on from one still stretch to the next.</summary>
    /// <param name="system">Receives two observations.</param>
    /// <param name="window">The earlier one.</param>
    /// <param name="moves">Whether sway is a motion.</param>
    /// <param name="edgeMS">Doubt of the velocity from edges of the force between samples, m/s.</param>
    public void AddLink(SymmetricSystem system, int window, bool moves, double edgeMS)
    {
        int to = Windows[window + 1].From;
        double seconds = (to - (Windows[window].To - 1)) * _dt;
        Span<double> row = stackalloc double[system.Size];
        double arrived = Velocity(row, to, window, moves);
        Negate(row);
        AddVelocity(row, window + 1, to, 1, moves);
        system.Add(row, arrived, 1 / (edgeMS * edgeMS));
        double reached = Position(row, to, window, moves);
        Negate(row);
        AddPosition(row, window + 1, to, 1, moves);
        system.Add(row, reached, 1 / (edgeMS * edgeMS * seconds * seconds / 3));
    }

    /// <summary>Velocity at a sample: value at zero unknowns, m/s, and its derivatives by them.</summary>
    public double VelocityAt(Span<double> row, int sample, bool moves) =>
        Velocity(row, sample, WindowOf(sample), moves);

    /// <summary>Displacement at a sample: value at zero unknowns, m, and its derivatives by them.</summary>
    public double PositionAt(Span<double> row, int sample, bool moves) =>
        Position(row, sample, WindowOf(sample), moves);

    /// <summary>Velocity within a still stretch: derivatives only, for at zero unknowns it is zero.</summary>
    public void VelocityIn(Span<double> row, int window, int sample, bool moves)
    {
        row.Clear();
        AddVelocity(row, window, sample, 1, moves);
    }

    /// <summary>Displacement within a still stretch: derivatives only.</summary>
    public void PositionIn(Span<double> row, int window, int sample, bool moves)
    {
        row.Clear();
        AddPosition(row, window, sample, 1, moves);
    }

    /// <summary>Takes from the force what is no push: drift, mean noise of each contact, and disturbance.</summary>
    /// <param name="force">Force of the stay, N.</param>
    /// <param name="unknowns">Mean of the unknowns.</param>
    /// <param name="disturbing">The part of it in which the waves disturb.</param>
    /// <param name="leastWaveN">Smaller waves are left in, N.</param>
    public void Correct(
        Span<double> force,
        ReadOnlySpan<double> unknowns,
        ReadOnlySpan<double> disturbing,
        double leastWaveN
    )
    {
        double drift = unknowns[1];
        for (int i = 0; i < force.Length && drift != 0; i++)
        {
            force[i] -= force[i] == 0 ? 0 : drift * (i + _offset - _zeroSample) * _dt;
        }

        for (int g = 0; g < _gaps.Length; g++)
        {
            int window = Math.Max(g - 1, 0);
            int origin = Origin(g) - _offset;
            double middle = (Windows[window].Middle - _offset) * _dt;
            for (int c = 0; c < _gaps[g].Contacts.Length; c++)
            {
                (double fromS, double toS) = _gaps[g].Contacts[c];
                int from = Math.Clamp(origin + (int)Math.Ceiling(fromS / _dt), 0, force.Length);
                int to = Math.Clamp(origin + (int)Math.Floor(toS / _dt) + 1, from, force.Length);
                double constant = unknowns[_constants[g] + c];
                for (int i = from; i < to; i++)
                {
                    force[i] -= constant;
                }

                for (int j = 0, at = First(window); j < Sway.Waves && to > from; j++, at += 2)
                {
                    if (Math.Abs(disturbing[at]) + Math.Abs(disturbing[at + 1]) > leastWaveN)
                    {
                        double omega = Sway.AngularFrequencies[j];
                        SubtractWave(force[from..to], omega, (from * _dt) - middle, disturbing[at], disturbing[at + 1]);
                    }
                }
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
    public int AnchorOf(int window, double sample) =>
        sample < Windows[window].From
            ? Windows[window].From
            : Math.Min(Windows[window].To - 1, Math.Max((int)sample, Windows[window].From));

    private static double AddWavePriors(SymmetricSystem system, int first, double[] variances, double square)
    {
        double log = 0;
        for (int j = 0; j < variances.Length; j++)
        {
            double weight = 1 / Math.Max(square * variances[j], 1e-9);
            system.AddPrior(first + (2 * j), weight);
            system.AddPrior(first + (2 * j) + 1, weight);
            log += 2 * Math.Log(weight);
        }

        return log;
    }

    private static void Negate(Span<double> row)
    {
        for (int a = 0; a < row.Length; a++)
        {
            row[a] = -row[a];
        }
    }

    private IEnumerable<(double FromS, double ToS)> Spans(IReadOnlyList<Contact> contacts, int from, int to, int origin)
    {
        foreach (Contact contact in contacts)
        {
            double a = Math.Max(contact.TouchDown?.Sample ?? contact.Samples.From, from);
            double b = Math.Min(contact.TakeOff?.Sample ?? contact.Samples.To, to);
            if (b - a > 1)
            {
                yield return ((a - origin) * _dt, (b - origin) * _dt);
            }
        }
    }

    private void SubtractWave(Span<double> force, double omega, double firstS, double a, double b)
    {
        (double sin, double cos) = Math.SinCos(omega * firstS);
        (double turnSin, double turnCos) = Math.SinCos(omega * _dt);
        for (int i = 0; i < force.Length; i++)
        {
            force[i] -= (a * cos) + (b * sin);
            (cos, sin) = ((cos * turnCos) - (sin * turnSin), (sin * turnCos) + (cos * turnSin));
        }
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

        int a = anchor - _offset;
        double gained = (_impulse[sample - _offset] - _impulse[a]) / MassKg;
        row[0] -= gained;
        int gap = t < 0 ? 0 : window + 1;
        row[1] -= _gaps[gap].OfRamp((_zeroSample - anchor) * _dt, t).Impulse / MassKg;
        for (int c = 0; c < _gaps[gap].Contacts.Length; c++)
        {
            row[_constants[gap] + c] -= _gaps[gap].OfConstant(c, t).Impulse / MassKg;
        }

        if (!moves)
        {
            AddDisturbance(row, window, gap, anchor, t, moved: false);
        }

        return gained - (G * t);
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
        int a = anchor - _offset;
        double moved = (_moved[sample - _offset] - _moved[a] - (_impulse[a] * t)) / MassKg;
        row[0] -= moved;
        int gap = t < 0 ? 0 : window + 1;
        row[1] -= _gaps[gap].OfRamp((_zeroSample - anchor) * _dt, t).Moved / MassKg;
        for (int c = 0; c < _gaps[gap].Contacts.Length; c++)
        {
            row[_constants[gap] + c] -= _gaps[gap].OfConstant(c, t).Moved / MassKg;
        }

        if (!moves)
        {
            AddDisturbance(row, window, gap, anchor, t, moved: true);
        }

        return moved - (G * t * t / 2);
    }

    /// <summary>Takes off what the waves of a still stretch, gone on as a disturbance, made of velocity or position.</summary>
    private void AddDisturbance(Span<double> row, int window, int gap, int anchor, double t, bool moved)
    {
        int at = First(window);
        double middle = (Windows[window].Middle - anchor) * _dt;
        foreach (double omega in Sway.AngularFrequencies)
        {
            (double c, double s, double cm, double sm) = _gaps[gap].Of(omega, t);
            (double cosine, double sine) = moved ? (cm, sm) : (c, s);
            (double sin, double cos) = Math.SinCos(omega * middle);
            row[at] -= ((cosine * cos) + (sine * sin)) / MassKg;
            row[at + 1] -= ((sine * cos) - (cosine * sin)) / MassKg;
            at += 2;
        }
    }

    private void AddVelocity(Span<double> row, int window, int sample, double factor, bool moves)
    {
        if (!moves)
        {
            return;
        }

        int first = First(window);
        double t = (sample - Windows[window].Middle) * _dt;
        ReadOnlySpan<double> frequencies = Sway.AngularFrequencies;
        for (int j = 0; j < frequencies.Length; j++)
        {
            (double sin, double cos) = Math.SinCos(frequencies[j] * t);
            row[first + (2 * j)] += factor * sin / (frequencies[j] * MassKg);
            row[first + (2 * j) + 1] -= factor * cos / (frequencies[j] * MassKg);
        }
    }

    private void AddPosition(Span<double> row, int window, int sample, double factor, bool moves)
    {
        if (window > 0)
        {
            row[Posture(window)] += factor;
        }

        if (!moves)
        {
            return;
        }

        int first = First(window);
        double t = (sample - Windows[window].Middle) * _dt;
        ReadOnlySpan<double> frequencies = Sway.AngularFrequencies;
        for (int j = 0; j < frequencies.Length; j++)
        {
            (double sin, double cos) = Math.SinCos(frequencies[j] * t);
            double f = factor / (frequencies[j] * frequencies[j] * MassKg);
            row[first + (2 * j)] -= f * cos;
            row[first + (2 * j) + 1] -= f * sin;
        }
    }
}
