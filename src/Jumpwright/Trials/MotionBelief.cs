namespace Jumpwright.Trials;

/// <summary>
/// One hypothesis about a stay with its solution: unknowns, their covariance, and how well it explains the recording. What
/// usually holds is let in afterwards, one condition at a time, each with its own evidence.
/// </summary>
internal sealed class MotionBelief
{
    private readonly SymmetricSystem _system;
    private readonly (double[] Shared, double Variance)[] _conditions;

    private MotionBelief(
        bool moves,
        SymmetricSystem system,
        double[] unknowns,
        (double[] Shared, double Variance)[] conditions,
        double logEvidence,
        bool rare
    )
    {
        Moves = moves;
        _system = system;
        Unknowns = unknowns;
        _conditions = conditions;
        LogEvidence = logEvidence;
        Rare = rare;
    }

    /// <summary>Whether sway is a motion.</summary>
    public bool Moves { get; }

    public double[] Unknowns { get; }

    public double LogEvidence { get; }

    /// <summary>True where a condition was let in by its rare side.</summary>
    public bool Rare { get; }

    /// <summary>Solves the system of a hypothesis.</summary>
    public static MotionBelief Of(SwayHypothesis sway, SymmetricSystem system, double logPriorPrecision)
    {
        double[] unknowns = system.Solve();
        double evidence =
            sway.LogPrior + system.Explained(unknowns) - (system.LogDeterminant / 2) + (logPriorPrecision / 2);
        return new MotionBelief(sway.Moves, system, unknowns, [], evidence, false);
    }

    /// <summary>Value of row · unknowns.</summary>
    public double Value(ReadOnlySpan<double> row) => Product(row, Unknowns);

    /// <summary>Variance of row · unknowns.</summary>
    public double Variance(ReadOnlySpan<double> row)
    {
        double variance = _system.Variance(row);
        foreach ((double[] shared, double of) in _conditions)
        {
            double part = Product(row, shared);
            variance -= part * part / of;
        }

        return Math.Max(variance, 0);
    }

    /// <summary>The same belief once row · unknowns is known to be a value, give or take; one for each way it may be known.</summary>
    public IEnumerable<MotionBelief> Given(double[] row, double value, IReadOnlyList<Likely> ways)
    {
        double off = value - Value(row);
        double[] shared = _system.Covariances(row);
        foreach ((double[] before, double of) in _conditions)
        {
            double part = Product(row, before) / of;
            for (int a = 0; a < shared.Length; a++)
            {
                shared[a] -= part * before[a];
            }
        }

        double own = Product(row, shared);
        foreach (Likely way in ways)
        {
            double variance = own + (way.Doubt * way.Doubt);
            var unknowns = new double[shared.Length];
            for (int a = 0; a < shared.Length; a++)
            {
                unknowns[a] = Unknowns[a] + (shared[a] * off / variance);
            }

            yield return new MotionBelief(
                Moves,
                _system,
                unknowns,
                [.. _conditions, (shared, variance)],
                LogEvidence + Math.Log(way.Part) - (((off * off / variance) + Math.Log(variance)) / 2),
                Rare || way.Rare
            );
        }
    }

    private static double Product(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        double sum = 0;
        for (int i = 0; i < a.Length && i < b.Length; i++)
        {
            sum += a[i] * b[i];
        }

        return sum;
    }
}
