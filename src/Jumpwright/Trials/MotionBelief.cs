namespace Jumpwright.Trials;

/// <summary>
/// One hypothesis about a stay with its solution: unknowns, their covariance, and how well it explains the recording. What ties
/// the still stretches together and what usually holds is let in one condition at a time, each with its own evidence.
/// </summary>
internal sealed class MotionBelief
{
    private readonly (double[] Shared, double Variance)[] _conditions;

    private MotionBelief(
        bool moves,
        StandingSolution standing,
        double[] unknowns,
        (double[] Shared, double Variance)[] conditions,
        double logEvidence,
        bool rare
    )
    {
        Moves = moves;
        Standing = standing;
        Unknowns = unknowns;
        _conditions = conditions;
        LogEvidence = logEvidence;
        Rare = rare;
    }

    /// <summary>Whether sway is a motion.</summary>
    public bool Moves { get; }

    /// <summary>What the still stretches alone say.</summary>
    public StandingSolution Standing { get; }

    public double[] Unknowns { get; }

    public double LogEvidence { get; }

    /// <summary>True where a condition was let in by its rare side.</summary>
    public bool Rare { get; }

    public static MotionBelief Of(SwayHypothesis sway, StandingSolution standing) =>
        new(sway.Moves, standing, standing.Mean, [], standing.LogEvidence + Math.Log(sway.Part), false);

    /// <summary>Value of row · unknowns.</summary>
    public double Value(ReadOnlySpan<double> row) => SymmetricMatrix.Dot(row, Unknowns);

    /// <summary>Variance of row · unknowns.</summary>
    /// <param name="row">The row.</param>
    /// <param name="covariances">Of the unknowns with it, by the still stretches alone.</param>
    public double Variance(ReadOnlySpan<double> row, ReadOnlySpan<double> covariances)
    {
        double variance = SymmetricMatrix.Dot(row, covariances);
        foreach ((double[] shared, double of) in _conditions)
        {
            double part = SymmetricMatrix.Dot(row, shared);
            variance -= part * part / of;
        }

        return Math.Max(variance, 0);
    }

    /// <summary>Adds the same belief once row · unknowns is known to be a value, give or take; one for each way it may be known.</summary>
    public void Given(
        ReadOnlySpan<double> row,
        ReadOnlySpan<double> covariances,
        double value,
        ReadOnlySpan<Likely> ways,
        List<MotionBelief> into
    )
    {
        double off = value - Value(row);
        double[] shared = covariances.ToArray();
        foreach ((double[] before, double of) in _conditions)
        {
            SymmetricMatrix.AddScaled(shared, before, -SymmetricMatrix.Dot(row, before) / of);
        }

        double own = Math.Max(SymmetricMatrix.Dot(row, shared), 0);
        foreach (Likely way in ways)
        {
            double variance = own + (way.Doubt * way.Doubt);
            double[] unknowns = [.. Unknowns];
            SymmetricMatrix.AddScaled(unknowns, shared, off / variance);
            into.Add(
                new MotionBelief(
                    Moves,
                    Standing,
                    unknowns,
                    [.. _conditions, (shared, variance)],
                    LogEvidence + Math.Log(way.Part) - (((off * off / variance) + Math.Log(variance)) / 2),
                    Rare || way.Rare
                )
            );
        }
    }
}
