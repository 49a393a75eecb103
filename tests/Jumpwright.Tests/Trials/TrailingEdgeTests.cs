using Jumpwright.Recordings;
using Jumpwright.Trials;

namespace Jumpwright.Tests.Trials;

/// <summary>
/// A plate whose own swing lies near the sampling rate is seen through a stroboscope: its ringing after the take-off looks like a slow force that dies
/// away over some hundredths of a second, as if toes were dragging.
/// </summary>
public class TrailingEdgeTests
{
    private static readonly PlainJump Jump = new()
    {
        NoiseN = 0.7,
        RateHz = 200,
        StandAfterS = 3,
    };

    private static Trial Measure(double swingN, double swingHz)
    {
        ForceRecording whole = Jump.Record();
        double[] force =
        [
            .. whole
                .TotalN.ToArray()
                .Select(
                    (f, i) =>
                    {
                        double since = (i / Jump.RateHz) - Jump.TakeOffS;
                        return since > 0 && since < Jump.FlightS
                            ? f + (swingN * Math.Exp(-since / 0.016) * Math.Cos(2 * Math.PI * swingHz * since))
                            : f;
                    }
                ),
        ];
        return Assert.Single(Measuring.Of(whole with { TotalN = force }).Require());
    }

    [Theory]
    [InlineData(35)]
    [InlineData(50)]
    public void ASwingNearTheSamplingRate_MakesTheTakeOffDoubtful(double swingN) =>
        Assert.Contains(MeasureNames.FlightTime, Measure(swingN, 201).Doubtful);

    [Fact]
    public void WithoutSwing_TheTakeOffIsSure()
    {
        Trial trial = Measure(0, 201);
        Assert.Empty(trial.Doubtful);
        Assert.Equal(Jump.FlightS, trial.Value(MeasureNames.FlightTime), 0.003);
    }
}
