using MathNet.Numerics.Distributions;

namespace Jumpwright.Statistics;

/// <summary>
/// Is one athlete's change real? Source: Swinton et al. 2018, Front Nutr 5:41, doi:10.3389/fnut.2018.00041 (formulas from
/// memory; flat prior). The doubt of a difference of two single results is √2 times the typical error.
/// </summary>
public static class IndividualChange
{
    /// <summary>Interval that holds the true change with that confidence, both ends in the unit of the change.</summary>
    /// <param name="change">Later less earlier.</param>
    /// <param name="typicalError">Trial-to-trial error of one result, same unit.</param>
    /// <param name="confidence">Between 0 and 1, for example 0.9.</param>
    public static (double Lower, double Upper) Interval(double change, double typicalError, double confidence)
    {
        double half = Normal.InvCDF(0, 1, (1 + confidence) / 2) * Math.Sqrt(2) * typicalError;
        return (change - half, change + half);
    }

    /// <summary>Probability that the true change is more than the threshold.</summary>
    public static double ProbabilityAbove(double change, double typicalError, double threshold) =>
        Likelihood.Above(change, Math.Sqrt(2) * typicalError, threshold);
}
