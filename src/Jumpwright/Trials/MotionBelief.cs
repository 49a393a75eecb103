namespace Jumpwright.Trials;

/// <summary>
/// One hypothesis about a stay with its solution: unknowns, their covariance, and how well it explains the recording. What ties
/// the still stretches together and what usually holds is let in one condition at a time, each with its own evidence.
/// </summary>
internal sealed class MotionBelief
{
    private readonly Condition? _last;
    private readonly Scratch _scratch;

    private MotionBelief(
        bool moves,
        StandingSolution standing,
        ArraySegment<double> unknowns,
        Condition? last,
        double logEvidence,
        bool rare,
        Scratch scratch
    )
    {
        Moves = moves;
        Standing = standing;
        Unknowns = unknowns;
        _last = last;
        _scratch = scratch;
        LogEvidence = logEvidence;
        Rare = rare;
    }

    /// <summary>Whether sway is a motion.</summary>
    public bool Moves { get; }

    /// <summary>What the still stretches alone say.</summary>
    public StandingSolution Standing { get; }

    public ArraySegment<double> Unknowns { get; }

    public double LogEvidence { get; }

    /// <summary>True where a condition was let in by its rare side.</summary>
    public bool Rare { get; }

    public static MotionBelief Of(SwayHypothesis sway, StandingSolution standing, Scratch scratch) =>
        new(sway.Moves, standing, standing.Mean, null, standing.LogEvidence + Math.Log(sway.Part), false, scratch);

    /// <summary>Value of row · unknowns.</summary>
    public double Value(ReadOnlySpan<double> row) => SymmetricMatrix.Dot(row, Unknowns);

    /// <summary>Variance of row · unknowns.</summary>
    /// <param name="row">The row.</param>
    /// <param name="covariances">Of the unknowns with it, by the still stretches alone.</param>
    public double Variance(ReadOnlySpan<double> row, ReadOnlySpan<double> covariances)
    {
        double variance = SymmetricMatrix.Dot(row, covariances);
        for (Condition? condition = _last; condition is not null; condition = condition.Before)
        {
            double part = SymmetricMatrix.Dot(row, condition.Shared);
            variance -= part * part / condition.Variance;
        }

        return Math.Max(variance, 0);
    }

    /// <summary>Covariance of every unknown with row · unknowns, what was let in before taken into account.</summary>
    /// <param name="row">The row.</param>
    /// <param name="covariances">The same by the still stretches alone.</param>
    public ArraySegment<double> Shared(ReadOnlySpan<double> row, ReadOnlySpan<double> covariances)
    {
        ArraySegment<double> shared = _scratch.Copy(covariances);
        for (Condition? condition = _last; condition is not null; condition = condition.Before)
        {
            double part = SymmetricMatrix.Dot(row, condition.Shared);
            SymmetricMatrix.AddScaled(shared, condition.Shared, -part / condition.Variance);
        }

        return shared;
    }

    /// <summary>The same belief once a number is known to be farther by so much, give or take.</summary>
    /// <param name="shared">Covariance of every unknown with the number.</param>
    /// <param name="off">Known value less the one believed.</param>
    /// <param name="variance">Of that difference.</param>
    /// <param name="logEvidence">What then speaks for the belief.</param>
    /// <param name="rare">True where that is worth saying.</param>
    public MotionBelief Given(ArraySegment<double> shared, double off, double variance, double logEvidence, bool rare)
    {
        ArraySegment<double> unknowns = _scratch.Copy(Unknowns);
        SymmetricMatrix.AddScaled(unknowns, shared, off / variance);
        var condition = new Condition(_last, shared, variance);
        return new(Moves, Standing, unknowns, condition, logEvidence, Rare || rare, _scratch);
    }
}
