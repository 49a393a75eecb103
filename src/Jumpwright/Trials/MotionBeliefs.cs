namespace Jumpwright.Trials;

/// <summary>Beliefs about one stay, weighed by their evidence. What is told of them is the mean over all, with the doubt within and between.</summary>
internal sealed class MotionBeliefs
{
    /// <summary>A belief so much less likely than the best is dropped (in logarithms).</summary>
    private const double Negligible = 4;

    private readonly List<MotionBelief> _beliefs;
    private readonly double[] _parts;

    private MotionBeliefs(List<MotionBelief> beliefs)
    {
        _beliefs = beliefs;
        double best = beliefs.Max(b => b.LogEvidence);
        _parts = [.. beliefs.Select(b => Math.Exp(b.LogEvidence - best))];
        double sum = _parts.Sum();
        for (int i = 0; i < _parts.Length; i++)
        {
            _parts[i] /= sum;
        }
    }

    /// <summary>Part of the beliefs in which something rare is so.</summary>
    public double RarePart => Part(b => b.Rare);

    /// <summary>Part of the beliefs in which sway is a motion.</summary>
    public double MovesPart => Part(b => b.Moves);

    public static MotionBeliefs Of(IEnumerable<MotionBelief> beliefs)
    {
        List<MotionBelief> all = [.. beliefs];
        double best = all.Max(b => b.LogEvidence);
        all.RemoveAll(b => b.LogEvidence < best - Negligible);
        return new MotionBeliefs(all);
    }

    /// <summary>The beliefs once a condition is let in.</summary>
    /// <param name="row">Gives the row of a hypothesis and the value at zero unknowns.</param>
    /// <param name="value">Usual value.</param>
    /// <param name="ways">How usual.</param>
    public MotionBeliefs Given(Func<bool, (double[] Row, double AtZero)> row, double value, IReadOnlyList<Likely> ways)
    {
        (double[] Row, double AtZero)? moves = null;
        (double[] Row, double AtZero)? still = null;
        return Of(
            _beliefs.SelectMany(b =>
            {
                (double[] of, double atZero) = b.Moves ? moves ??= row(true) : still ??= row(false);
                return b.Given(of, value - atZero, ways);
            })
        );
    }

    /// <summary>Mean of the unknowns.</summary>
    public double[] Mean() => Sum(_ => true);

    /// <summary>What those beliefs in which sway is a disturbance give to that mean.</summary>
    public double[] MeanDisturbing() => Sum(b => !b.Moves);

    /// <summary>Mean and standard deviation of a linear function.</summary>
    /// <param name="moving">Its row where sway is a motion.</param>
    /// <param name="still">Its row where it is a disturbance.</param>
    public (double Mean, double Deviation) Tell(ReadOnlySpan<double> moving, ReadOnlySpan<double> still)
    {
        double mean = 0;
        double square = 0;
        for (int k = 0; k < _beliefs.Count; k++)
        {
            ReadOnlySpan<double> row = _beliefs[k].Moves ? moving : still;
            double value = _beliefs[k].Value(row);
            mean += _parts[k] * value;
            square += _parts[k] * ((value * value) + _beliefs[k].Variance(row));
        }

        return (mean, Math.Sqrt(Math.Max(square - (mean * mean), 0)));
    }

    private double[] Sum(Func<MotionBelief, bool> such)
    {
        var sum = new double[_beliefs[0].Unknowns.Length];
        for (int k = 0; k < _beliefs.Count; k++)
        {
            double[] unknowns = _beliefs[k].Unknowns;
            double part = such(_beliefs[k]) ? _parts[k] : 0;
            for (int a = 0; a < sum.Length && part > 0; a++)
            {
                sum[a] += part * unknowns[a];
            }
        }

        return sum;
    }

    private double Part(Func<MotionBelief, bool> such) => _beliefs.Select((b, k) => such(b) ? _parts[k] : 0).Sum();
}
