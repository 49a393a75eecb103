using Jumpwright.Progression;

namespace Jumpwright.Tests.Progression;

/// <summary>After a failed landing screen the floor comes before any box.</summary>
public class DropHoldTests
{
    private static AthleteStory Failed =>
        new AthleteStory()
            .Earned("snap-down", 20)
            .Earned("low-drop-landing", 10)
            .Screened("landing-screen", 8, "faults");

    [Fact]
    public void FailedScreen_ClosesDrops_AndNamesTheSnapDown()
    {
        Assert.Equal(RungState.Open, new AthleteStory().Earned("snap-down").State("low-drop-landing"));
        Assert.Equal(RungState.Closed, Failed.State("low-drop-landing"));
        Assert.NotEqual(RungState.Closed, Failed.State("snap-down"));
        RungReason hold = Failed.Reason("low-drop-landing", "drop-hold");
        Assert.True(hold.Closes);
        Assert.Contains("Nothing is stepped off", hold.Sentence, StringComparison.Ordinal);
        Assert.Equal("one clean session of snap-down", hold.CheapestTest!.ToString());
    }

    /// <summary>A clean landing on the floor after the day of the screen opens them again, one on that day does not.</summary>
    [Fact]
    public void CleanLandingOnTheFloorSince_OpensThemAgain()
    {
        Assert.Equal(RungState.Closed, Failed.Did("snap-down", 3).State("low-drop-landing"));
        Assert.Equal(RungState.Closed, Failed.Did("snap-down", 2, faults: 1).State("low-drop-landing"));
        Assert.NotEqual(RungState.Closed, Failed.Did("snap-down", 2).State("low-drop-landing"));
    }
}
