namespace Jumpwright.Statistics;

/// <summary>
/// An athlete's own trial-to-trial SD, from few trials and a published one. The published value counts as a number of
/// degrees of freedom of its own and fades as the athlete's own trials come in (a scaled inverse-χ² prior, its mean form).
/// </summary>
public static class TrialScatter
{
    /// <summary>Pooled SD, in the unit of the trials.</summary>
    /// <param name="sumOfSquares">Sum of squared deviations from each day's own mean.</param>
    /// <param name="degreesOfFreedom">Trials less days.</param>
    /// <param name="priorSd">Published trial-to-trial SD in the same unit.</param>
    /// <param name="priorDegreesOfFreedom">How many degrees of freedom the published value counts for.</param>
    public static double Pooled(
        double sumOfSquares,
        int degreesOfFreedom,
        double priorSd,
        double priorDegreesOfFreedom
    ) =>
        Math.Sqrt(
            (sumOfSquares + (priorDegreesOfFreedom * priorSd * priorSd)) / (degreesOfFreedom + priorDegreesOfFreedom)
        );
}
