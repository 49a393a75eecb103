using Jumpwright.Recordings;
using Jumpwright.Simulation.Foreign;
using Jumpwright.Simulation.Validating;
using Jumpwright.Trials;

namespace Jumpwright.Tests.Simulation;

/// <summary>The second population: made by other mechanics than the first, and measured without one confident error.</summary>
public class ForeignPopulationTests
{
    private static readonly Lazy<ForeignReport> Report = new(() => ForeignReport.Run(16));

    [Fact]
    public void CleanRecordings_HaveNoSilentFailure_AndAreMeasured()
    {
        Assert.Empty(Report.Value.Clean.Where(r => r.SilentFailures().Any()).Select(r => r.Name));
        Assert.True(Report.Value.Clean.Count(r => r.Refusal is not null) <= 1);
    }

    [Theory]
    [InlineData(MeasureNames.JumpHeightFlightTime)]
    [InlineData(MeasureNames.ContactTime)]
    [InlineData(MeasureNames.BodyWeight)]
    public void OnCleanRecordings_TheStatedDoubtHoldsTheTruth(string measure) =>
        Assert.InRange(ValidationReport.Summary(Report.Value.Clean, measure)!.Coverage, 0.85, 1);

    [Fact]
    public void TheSameNumber_MakesTheSameBytes_AndAnotherOthers()
    {
        byte[] once = ForeignPopulation.Varied(JumpTask.DropJump, 3, 1).Bytes;
        Assert.Equal(once, ForeignPopulation.Varied(JumpTask.DropJump, 3, 1).Bytes);
        Assert.NotEqual(once, ForeignPopulation.Varied(JumpTask.DropJump, 3, 2).Bytes);
    }

    [Fact]
    public void ThePage_NamesEveryTaskAndItsCommand()
    {
        string page = Report.Value.Markdown("./jumpwright validate --foreign --each 16");
        Assert.All(Validation.VariedTasks, task => Assert.Contains($"| {task.Id()} |", page, StringComparison.Ordinal));
        Assert.Contains("validate --foreign", page, StringComparison.Ordinal);
    }
}
