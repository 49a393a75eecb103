using Jumpwright.Simulation.Profiles;

namespace Jumpwright.Tests.Simulation;

public class RunUpValidationTests(ITestOutputHelper output)
{
    /// <summary>The next run-up that is asked for leaves less to lose than one drawn at random, and nothing goes beyond the bound.</summary>
    [Fact]
    public void NextRunUp_BeatsARandomOne_AndKeepsTheBound()
    {
        RunUpReport report = RunUpValidation.Run(150);
        output.WriteLine(report.ToString());
        Assert.Equal(0, report.AboveBound);
        Assert.InRange(report.DoubtRatio, 0.1, 0.97);
        Assert.InRange(report.LossMeanPct, 0, 5);
    }

    /// <summary>Every row is made and none of the numbers is out of the world.</summary>
    [Fact]
    public void Sensitivity_OfFewAthletes_HasEveryRow()
    {
        SensitivityReport report = SensitivityValidation.Run(75);
        Assert.Equal(11, report.Drops.Length);
        Assert.Equal(9, report.Levels.Length);
        Assert.All(report.Levels, r => Assert.InRange(r.CoveragePct, 50, 100));
        Assert.Equal(3, report.Friction.Length);
        Assert.True(
            report.Friction[0].HoldsPct < report.Friction[2].HoldsPct,
            "less friction counted, fewer set-ups hold"
        );
        Assert.True(report.Friction[1].SlidesPct < 1, "the house's coefficient lets nothing slide");
        Assert.Equal(7, report.Effects.Length);
    }
}
