namespace Jumpwright.Simulation.Profiles;

/// <summary>How levels and alarms did on athletes whose truth is known.</summary>
/// <param name="Athletes">How many.</param>
/// <param name="Sessions">Sessions of each.</param>
/// <param name="CoverageNow">Share of sessions, from the fifth on, whose true level lies in the 95 % band drawn that day.</param>
/// <param name="CoverageSmooth">Share whose true level lies in the 95 % band drawn at the end.</param>
/// <param name="StatedRate">False alarms stated, per series and session.</param>
/// <param name="FalseRate">False alarms counted while no step had come.</param>
/// <param name="FalseRateKnown">The same for the filter that knows the variances.</param>
/// <param name="DelayMean">Sessions from a real step to the alarm in its direction, mean (those never noticed count to the end).</param>
/// <param name="DelayMeanKnown">The same for the filter that knows the variances.</param>
/// <param name="DelayMedian">Median.</param>
/// <param name="DelayMedianKnown">Median with known variances.</param>
/// <param name="Noticed">Share of steps noticed by the end.</param>
/// <param name="NoticedKnown">The same with known variances.</param>
public sealed record LevelReport(
    int Athletes,
    int Sessions,
    double CoverageNow,
    double CoverageSmooth,
    double StatedRate,
    double FalseRate,
    double FalseRateKnown,
    double DelayMean,
    double DelayMeanKnown,
    double DelayMedian,
    double DelayMedianKnown,
    double Noticed,
    double NoticedKnown
);
