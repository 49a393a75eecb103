using Jumpwright.Simulation.Profiles;

namespace Jumpwright.Tests.Simulation;

public class LoadValidationTests(ITestOutputHelper output)
{
    /// <summary>The next load that is asked for tells more than one drawn at random, in jumps and in pulls, and keeps its bounds.</summary>
    [Fact]
    public void NextLoad_BeatsARandomOne_AndKeepsTheBound()
    {
        LoadReport report = LoadValidation.Run(1000);
        output.WriteLine(report.ToString());
        Assert.Equal(0, report.AboveBound);
        Assert.InRange(report.JumpsAsked, 0.2, 1);
        Assert.InRange(report.JumpDoubtRatio, 0.3, 0.99);
        Assert.InRange(report.PullsAsked, 0.2, 1);
        Assert.InRange(report.PullDoubtRatio, 0.3, 0.97);
        Assert.InRange(report.PullMissRatio, 0.3, 1);
    }
}
