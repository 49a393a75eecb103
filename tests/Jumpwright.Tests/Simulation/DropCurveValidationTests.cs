using Jumpwright.Simulation.Profiles;

namespace Jumpwright.Tests.Simulation;

/// <summary>A short run of what <c>jumpwright validate --profiles</c> does; wider bars for its fewer athletes.</summary>
public class DropCurveValidationTests
{
    [Fact]
    public void DropHeight_KnownCurves_ChoiceLosesLittleAndStaysInsideTheLimits()
    {
        DropCurveReport report = DropCurveValidation.Run(250, 5);
        Assert.Equal(0, report.AboveLimit);
        Assert.Equal(0, report.StepsTooHigh);
        Assert.True(report.WithinThreePct >= 0.91, report.ToString());
        Assert.True(report.DoubtRatio < 0.95, report.ToString());
    }
}
