using MathNet.Numerics.Distributions;

namespace Jumpwright.Statistics;

/// <summary>How probable it is that the truth lies beyond a threshold, for a value with a normal doubt.</summary>
public static class Likelihood
{
    /// <summary>Probability that the truth is above the threshold. Without doubt it is 0 or 1 (½ on the threshold).</summary>
    /// <param name="value">Best estimate.</param>
    /// <param name="standardUncertainty">Its standard uncertainty, same unit, not negative.</param>
    /// <param name="threshold">Threshold, same unit.</param>
    public static double Above(double value, double standardUncertainty, double threshold) =>
        standardUncertainty > 0 ? Normal.CDF(0, 1, (value - threshold) / standardUncertainty)
        : value > threshold ? 1
        : value < threshold ? 0
        : 0.5;

    /// <summary>Probability that the truth is below the threshold.</summary>
    public static double Below(double value, double standardUncertainty, double threshold) =>
        1 - Above(value, standardUncertainty, threshold);
}
