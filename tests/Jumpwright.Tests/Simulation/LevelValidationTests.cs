using Jumpwright.Simulation.Profiles;

namespace Jumpwright.Tests.Simulation;

/// <summary>A short run of what <c>jumpwright validate --profiles</c> does on 2,000 athletes; wider bars for its fewer athletes.</summary>
public class LevelValidationTests
{
    [Fact]
    public void Levels_BandsAlarmsAndDelay_HoldWhatTheySay()
    {
        LevelReport report = LevelValidation.Run(225, 30, 5);
        Assert.InRange(report.CoverageNow, 0.92, 0.98);
        Assert.InRange(report.CoverageSmooth, 0.92, 0.98);
        Assert.InRange(report.FalseRate / report.StatedRate, 0.65, 1.4);
        Assert.InRange(report.DelayMean, 1, report.DelayMeanKnown + 4);
    }
}
