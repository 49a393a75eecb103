using Jumpwright.Athletes;
using Jumpwright.Recordings;
using Jumpwright.Trials;

namespace Jumpwright.Tests.Athletes;

/// <summary>Where thresholds come from does not change with what was tested.</summary>
public class ThresholdsTests
{
    [Fact]
    public void ReactiveStrength_CitesBothThresholds_TestedOrNot_WhicheverDecides()
    {
        string[] untested = Sources(Story.Untested);
        Assert.Equal(["schmidtbleicher-1992", "common-practice"], untested);
        Assert.Equal(untested, Sources(Dropped(contact: 0.30, index: 2.0)));
        Assert.Equal(untested, Sources(Dropped(contact: 0.19, index: 1.0)));
    }

    private static Story Dropped(double contact, double index) =>
        Story.Untested.Jumped(
            JumpTask.DropJump,
            [(MeasureNames.ContactTime, contact, 0.01), (MeasureNames.ReactiveStrengthIndex, index, 0.05)]
        );

    private static string[] Sources(Story story) => [.. story[Quality.ReactiveStrength].Thresholds.Select(s => s.Id)];
}
