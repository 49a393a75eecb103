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

    /// <summary>Covariance of every unknown with row · unknowns, what was let in before taken into account.</summary>
    /// <param name="row">The row.</param>
    /// <param name="covariances">The same by the still stretches alone.</param>
    public double[] Shared(ReadOnlySpan<double> row, ReadOnlySpan<double> covariances)
    {
        double[] shared = covariances.ToArray();
        foreach ((double[] before, double of) in _conditions)
        {
            SymmetricMatrix.AddScaled(shared, before, -SymmetricMatrix.Dot(row, before) / of);
        }

        return shared;
    }

    /// <summary>The same belief once a number is known to be farther by so much, give or take.</summary>
    /// <param name="shared">Covariance of every unknown with the number.</param>
    /// <param name="off">Known value less the one believed.</param>
    /// <param name="variance">Of that difference.</param>
    /// <param name="logEvidence">What then speaks for the belief.</param>
    /// <param name="rare">True where that is worth saying.</param>
    public MotionBelief Given(double[] shared, double off, double variance, double logEvidence, bool rare)
    {
        double[] unknowns = [.. Unknowns];
        SymmetricMatrix.AddScaled(unknowns, shared, off / variance);
        return new(Moves, Standing, unknowns, [.. _conditions, (shared, variance)], logEvidence, Rare || rare);
    }
}
