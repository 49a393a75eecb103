using Jumpwright.Simulation.Validating;
using Jumpwright.Trials;

namespace Jumpwright.Tests.Simulation;

/// <summary>Issue 2, "it holds when": the two clean populations, through the same doors as real recordings.</summary>
public class ValidationTests
{
    private static readonly Lazy<ValidationReport> Report = new(() =>
        Validation.Run(
            new ValidationOptions
            {
                VariedOfEachTask = 20,
                SpoiledOfEachDefect = 4,
                CleanOfOtherTasks = 20,
                Disturbed = 20,
                TimedOfEach = 20,
            }
        )
    );

    [Fact]
    public void FiveHundredCleanCountermovementJumps_HeightBiasUnder2mm_LimitsWithin10mm()
    {
        Assert.Equal(500, Report.Value.CleanCountermovementJumps.Length);
        ErrorSummary height = ValidationReport.Summary(
            Report.Value.CleanCountermovementJumps,
            MeasureNames.JumpHeight
        )!;
        Assert.True(height.Count + height.Doubtful >= 495, $"only {height.Count + height.Doubtful} were measured");
        Assert.True(height.Doubtful <= 5, $"{height.Doubtful} doubtful");
        Assert.InRange(height.Bias, -0.002, 0.002);
        Assert.InRange(height.Limit, 0, 0.0025);
    }

    [Fact]
    public void TwoHundredCleanDropJumps_TrustedDropHeightsWithin6mm_ContactWithinHalfAMillisecond()
    {
        Assert.Equal(200, Report.Value.CleanDropJumps.Length);
        ErrorSummary drop = ValidationReport.Summary(Report.Value.CleanDropJumps, MeasureNames.DropHeight)!;
        ErrorSummary contact = ValidationReport.Summary(Report.Value.CleanDropJumps, MeasureNames.ContactTime)!;
        Assert.True(drop.Count + drop.Doubtful >= 196, $"only {drop.Count + drop.Doubtful} drop heights");
        // One stand after a drop, with sway, perhaps a drift of the zero, and (decision 47) perhaps a person who still rises a little,
        // is often not enough for a centimetre, and the trial says so; more than a third are.
        Assert.True(drop.Count >= 70, $"only {drop.Count} drop heights trusted");
        Assert.True(contact.Count >= 196, $"only {contact.Count} contacts");
        Assert.InRange(drop.Limit, 0, 0.006);
        Assert.InRange(contact.Limit, 0, 0.0005);
    }

    [Fact]
    public void CleanRecordings_HaveNoSilentFailure()
    {
        Assert.Empty(Report.Value.CleanCountermovementJumps.Where(r => r.SilentFailures().Any()).Select(r => r.Name));
        Assert.Empty(Report.Value.CleanDropJumps.Where(r => r.SilentFailures().Any()).Select(r => r.Name));
    }

    [Fact]
    public void TheSameOptions_GiveTheSamePage()
    {
        ValidationOptions few = new()
        {
            CleanCountermovementJumps = 6,
            CleanDropJumps = 6,
            VariedOfEachTask = 4,
            SpoiledOfEachDefect = 2,
            CleanOfOtherTasks = 2,
            Disturbed = 2,
            TimedOfEach = 2,
        };
        string page = Validation.Run(few).Markdown();
        Assert.Equal(page, Validation.Run(few).Markdown());
        Assert.NotEqual(page, Validation.Run(few with { Seed = 5 }).Markdown());
    }

    [Fact]
    public void Coverage_HasWilsonsInterval()
    {
        // Wilson 1927, 8 of 10 at 95 %: 0.490 to 0.943 [computed].
        ErrorSummary summary = new("x", "m", 10, 0, 0, 1, 8, 1, 1);
        (double low, double high) = summary.CoverageInterval();
        Assert.Equal(0.490, low, 0.001);
        Assert.Equal(0.943, high, 0.001);
    }
}
