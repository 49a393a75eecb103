namespace Jumpwright.Statistics;

/// <summary>One step of the filter.</summary>
/// <param name="Day">Day number.</param>
/// <param name="Predicted">Level expected before the observation.</param>
/// <param name="PredictedVariance">Its variance; infinite before the first.</param>
/// <param name="Level">Level after it.</param>
/// <param name="Variance">Its variance.</param>
public readonly record struct FilteredLevel(
    double Day,
    double Predicted,
    double PredictedVariance,
    double Level,
    double Variance
);
