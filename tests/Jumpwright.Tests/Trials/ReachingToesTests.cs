using Jumpwright.Recordings;
using Jumpwright.Trials;

namespace Jumpwright.Tests.Trials;

/// <summary>
/// Toes that reach for the plate touch it for a moment and leave it again before the athlete lands: the flight has two ends, some hundredths of a second
/// apart, and a height counted from either is off by centimetres.
/// </summary>
public class ReachingToesTests
{
    private static readonly PlainJump Jump = new() { NoiseN = 1, StandAfterS = 3 };

    private static Trial Measure(double touchN, double lastsS, double beforeS)
    {
        ForceRecording whole = Jump.Record();
        double from = Jump.TouchDownS - beforeS - lastsS;
        double[] force =
        [
            .. whole
                .TotalN.ToArray()
                .Select(
                    (f, i) =>
                    {
                        double along = ((i / Jump.RateHz) - from) / lastsS;
                        return along is > 0 and < 1 ? f + (touchN * Math.Sin(Math.PI * along)) : f;
                    }
                ),
        ];
        return Assert.Single(Measuring.Of(whole with { TotalN = force }).Require());
    }

    [Theory]
    [InlineData(60, 0.02, 0.01)]
    [InlineData(60, 0.03, 0.03)]
    [InlineData(100, 0.015, 0.02)]
    public void ALightTouchBeforeTheLanding_MakesTheFlightDoubtful_AndNoHeightIsWronglySure(
        double touchN,
        double lastsS,
        double beforeS
    )
    {
        Trial trial = Measure(touchN, lastsS, beforeS);
        Assert.Contains(MeasureNames.FlightTime, trial.Doubtful);
        Assert.Contains(MeasureNames.JumpHeightFlightTime, trial.Doubtful);
        if (trial.FindTrusted(MeasureNames.JumpHeight) is { } height)
        {
            Assert.Equal(Jump.HeightM, height.Value, 0.004);
        }
    }

    [Fact]
    public void WithoutIt_TheFlightIsSure()
    {
        Trial trial = Measure(0, 0.02, 0.01);
        Assert.Empty(trial.Doubtful);
        Assert.Equal(Jump.FlightS, trial.Value(MeasureNames.FlightTime), 0.001);
    }
}
