using System.Runtime.CompilerServices;

namespace Jumpwright.Trials;

/// <summary>Beliefs about one stay, weighed by their evidence. What is told of them is the mean over all, with the doubt within and between.</summary>
internal sealed class MotionBeliefs
{
    /// <summary>A belief so much less likely than the best is dropped (in logarithms).</summary>
    private const double Negligible = 4;

    private readonly List<MotionBelief> _beliefs;
    private readonly double[] _parts;
    private readonly Scratch _scratch;

    private MotionBeliefs(List<MotionBelief> beliefs, Scratch scratch)
    {
        _scratch = scratch;
        double best = double.NegativeInfinity;
        foreach (MotionBelief belief in beliefs)
        {
            best = Math.Max(best, belief.LogEvidence);
        }

        beliefs.RemoveAll(b => b.LogEvidence < best - Negligible);
        _beliefs = beliefs;
        _parts = new double[beliefs.Count];
        double sum = 0;
        for (int k = 0; k < _parts.Length; k++)
        {
            _parts[k] = Math.Exp(beliefs[k].LogEvidence - best);
            sum += _parts[k];
        }

        for (int k = 0; k < _parts.Length; k++)
        {
            _parts[k] /= sum;
        }
    }

    /// <summary>Gives the row of a number, by whether sway is a motion, and its value at zero unknowns.</summary>
    public delegate double RowOf(Span<double> row, bool moves);

    private int Size => _beliefs[0].Unknowns.Count;

    /// <summary>Part of the beliefs in which something rare is so.</summary>
    public double RarePart => Part(static b => b.Rare);

    /// <summary>Part of the beliefs in which sway is a motion.</summary>
    public double MovesPart => Part(static b => b.Moves);

    /// <summary>Every hypothesis about sway with every size of it.</summary>
    public static MotionBeliefs Of(ReadOnlySpan<StandingSolution> sizes, Scratch scratch)
    {
        var beliefs = new List<MotionBelief>(2 * sizes.Length);
        foreach (SwayHypothesis sway in SwayHypothesis.All)
        {
            foreach (StandingSolution standing in sizes)
            {
                beliefs.Add(MotionBelief.Of(sway, standing, scratch));
            }
        }

        return new MotionBeliefs(beliefs, scratch);
    }

    /// <summary>The beliefs once a condition is let in.</summary>
    /// <param name="number">What the condition speaks of.</param>
    /// <param name="value">Usual value.</param>
    /// <param name="ways">How usual.</param>
    public MotionBeliefs Given(RowOf number, double value, ReadOnlySpan<UsualWay> ways)
    {
        var rows = new Rows(this, number);
        int count = _beliefs.Count * ways.Length;
        Span<(double Off, double Variance, double LogEvidence)> found = stackalloc (double, double, double)[count];
        var shared = new ArraySegment<double>[_beliefs.Count];
        double best = double.NegativeInfinity;
        for (int k = 0; k < shared.Length; k++)
        {
            MotionBelief belief = _beliefs[k];
            rows.Of(belief, out ReadOnlySpan<double> row, out double atZero, out ReadOnlySpan<double> covariances);
            shared[k] = belief.Shared(row, covariances);
            double own = Math.Max(SymmetricMatrix.Dot(row, shared[k]), 0);
            double off = value - atZero - belief.Value(row);
            for (int w = 0; w < ways.Length; w++)
            {
                double variance = own + (ways[w].Doubt * ways[w].Doubt);
                double log = Math.Log(ways[w].Part) - (((off * off / variance) + Math.Log(variance)) / 2);
                found[(k * ways.Length) + w] = (off, variance, belief.LogEvidence + log);
                best = Math.Max(best, belief.LogEvidence + log);
            }
        }

        var into = new List<MotionBelief>(count);
        for (int k = 0; k < count; k++)
        {
            (double off, double variance, double log) = found[k];
            if (log >= best - Negligible)
            {
                (int of, int way) = Math.DivRem(k, ways.Length);
                into.Add(_beliefs[of].Given(shared[of], off, variance, log, ways[way].Rare));
            }
        }

        return new MotionBeliefs(into, _scratch);
    }

    /// <summary>Mean of the unknowns.</summary>
    public double[] Mean() => Sum(static _ => true);

    /// <summary>What those beliefs in which sway is a disturbance give to that mean.</summary>
    public double[] MeanDisturbing() => Sum(static b => !b.Moves);

    /// <summary>Mean of a number, value at zero unknowns left out.</summary>
    public double MeanOf(RowOf number)
    {
        (int, int) mark = _scratch.Mark();
        var rows = new Rows(this, number);
        double mean = 0;
        for (int k = 0; k < _parts.Length; k++)
        {
            mean += _parts[k] * _beliefs[k].Value(rows.RowOf(_beliefs[k], out _));
        }

        _scratch.Return(mark);
        return mean;
    }

    /// <summary>What is believed of a number, round its mean.</summary>
    public Believed Tell(RowOf number)
    {
        (int, int) mark = _scratch.Mark();
        var rows = new Rows(this, number);
        var off = new double[_parts.Length];
        var deviation = new double[_parts.Length];
        double mean = 0;
        for (int k = 0; k < _parts.Length; k++)
        {
            rows.Of(_beliefs[k], out ReadOnlySpan<double> row, out _, out ReadOnlySpan<double> covariances);
            off[k] = _beliefs[k].Value(row);
            deviation[k] = Math.Sqrt(_beliefs[k].Variance(row, covariances));
            mean += _parts[k] * off[k];
        }

        for (int k = 0; k < off.Length; k++)
        {
            off[k] -= mean;
        }

        _scratch.Return(mark);
        return new Believed(off, deviation, _parts);
    }

    private double[] Sum(Func<MotionBelief, bool> such)
    {
        var sum = new double[Size];
        for (int k = 0; k < _parts.Length; k++)
        {
            if (such(_beliefs[k]))
            {
                SymmetricMatrix.AddScaled(sum, _beliefs[k].Unknowns, _parts[k]);
            }
        }

        return sum;
    }

    private double Part(Func<MotionBelief, bool> such)
    {
        double part = 0;
        for (int k = 0; k < _parts.Length; k++)
        {
            part += such(_beliefs[k]) ? _parts[k] : 0;
        }

        return part;
    }

    /// <summary>The rows of one number and their covariances, each made once.</summary>
    private struct Rows(MotionBeliefs of, RowOf number)
    {
        private readonly Scratch _scratch = of._scratch;
        private readonly int _size = of.Size;
        private ArraySegment<double> _moving;
        private ArraySegment<double> _still;
        private double _movingAtZero;
        private double _stillAtZero;
        private BySize _whenMoving;
        private BySize _whenStill;

        /// <summary>A number's row, and its value at zero unknowns.</summary>
        public ReadOnlySpan<double> RowOf(MotionBelief belief, out double atZero)
        {
            ref ArraySegment<double> row = ref belief.Moves ? ref _moving : ref _still;
            ref double value = ref belief.Moves ? ref _movingAtZero : ref _stillAtZero;
            if (row.Array is null)
            {
                row = _scratch.Noughts(_size);
                value = number(row, belief.Moves);
            }

            atZero = value;
            return row;
        }

        /// <summary>The same with the covariances of all unknowns with it, by the still stretches alone.</summary>
        public void Of(
            MotionBelief belief,
            out ReadOnlySpan<double> row,
            out double atZero,
            out ReadOnlySpan<double> covariances
        )
        {
            row = RowOf(belief, out atZero);
            ref BySize known = ref belief.Moves ? ref _whenMoving : ref _whenStill;
            ref ArraySegment<double> made = ref known[belief.Standing.Index];
            if (made.Array is null)
            {
                made = _scratch.Noughts(_size);
                belief.Standing.Covariances(row, made);
            }

            covariances = made;
        }
    }

    /// <summary>One list of numbers for each size of sway.</summary>
    [InlineArray(SwayHypothesis.Sizes)]
    private struct BySize
    {
        private ArraySegment<double> _first;
    }
}
