using MathNet.Numerics.Distributions;

namespace Jumpwright.Progression;

/// <summary>How probable it is that the true value keeps a threshold, given a value with its doubt.</summary>
internal static class Chance
{
    /// <summary>
    /// Probability that the true value is at least (or at most) the threshold, for a normal with that mean and standard
    /// uncertainty. Whole numbers get half a unit of grace: "at most 4" means below 4.5. Without doubt it is 0 or 1.
    /// </summary>
    internal static double Keeps(double value, double standardUncertainty, string sense, double threshold, bool count)
    {
        bool atMost = sense == "at-most";
        double edge = threshold + (count ? (atMost ? 0.5 : -0.5) : 0);
        double margin = atMost ? edge - value : value - edge;
        return standardUncertainty > 0 ? Normal.CDF(0, standardUncertainty, margin)
            : margin >= 0 ? 1
            : 0;
    }
}
