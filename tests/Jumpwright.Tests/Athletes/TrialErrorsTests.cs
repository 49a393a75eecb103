using Jumpwright.Athletes.Profiles;
using Jumpwright.Recordings;
using Jumpwright.Trials;

namespace Jumpwright.Tests.Athletes;

/// <summary>How much a measure varies from trial to trial, before an athlete's own trials say it.</summary>
public class TrialErrorsTests
{
    [Theory]
    [InlineData(JumpTask.CountermovementJump)]
    [InlineData(JumpTask.SquatJump)]
    public void TakeOffVelocity_VariesHalfAsMuchAsHeight_WhichIsItsSquare(JumpTask task)
    {
        const double velocity = 2.6;
        double height = velocity * velocity / (2 * 9.80665);
        double ofVelocity = TrialErrors.StartingSd(MeasureNames.TakeOffVelocity, task, velocity);
        double ofHeight = TrialErrors.StartingSd(MeasureNames.JumpHeight, task, height);
        // dh = v dv / g.
        Assert.Equal(ofHeight, velocity * ofVelocity / 9.80665, 1e-9);
    }

    [Fact]
    public void Counts_AreCounted_NotMeasured() =>
        Assert.Equal(0, TrialErrors.StartingSd(MeasureNames.HopsFound, JumpTask.RepeatedHops, 10));
}
