namespace Jumpwright.Statistics;

/// <summary>What is believed of a curve with one peak before a trial is seen.</summary>
/// <param name="PeakAt">Where the peak is expected, in x.</param>
/// <param name="PeakSd">How far off that may be, one SD.</param>
/// <param name="PeakLow">Lowest place the peak can have.</param>
/// <param name="PeakHigh">Highest.</param>
/// <param name="BendMedian">k in y = R exp(−k (x − p)²), median, per x².</param>
/// <param name="BendLogSd">SD of ln k.</param>
/// <param name="NoisePct">Trial-to-trial SD, % of the mean, to start from.</param>
/// <param name="NoiseDegreesOfFreedom">How many degrees of freedom that counts for.</param>
public sealed record CurvePrior(
    double PeakAt,
    double PeakSd,
    double PeakLow,
    double PeakHigh,
    double BendMedian,
    double BendLogSd,
    double NoisePct,
    double NoiseDegreesOfFreedom
);
