using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Trials;

namespace Jumpwright.Tests.Trials;

/// <summary>
/// Some programs write nothing where the force lies below their threshold. The last newtons of a take-off and the first of a landing are then missing, and where
/// the force really met nothing has to be read from what is left, with a doubt that says so.
/// </summary>
public class CutOffExportTests
{
    private static Trial Measured(PlainJump jump, double thresholdN)
    {
        ForceRecording whole = jump.Record();
        double[] force = [.. whole.TotalN.ToArray().Select(f => f < thresholdN ? 0 : f)];
        return Assert.Single(Measuring.Of(whole with { TotalN = force }).Require());
    }

    [Theory]
    [InlineData(0.3)]
    [InlineData(2)]
    public void TheFlight_IsWhatItWas_WithinTheDoubtThatIsStated(double noiseN)
    {
        double[] rates = [300, 500, 1000, 2000];
        double[] thresholds = [8, 15, 25];
        foreach (double rateHz in rates)
        {
            foreach (double thresholdN in thresholds)
            {
                for (int seed = 1; seed <= 5; seed++)
                {
                    var jump = new PlainJump
                    {
                        NoiseN = noiseN,
                        RateHz = rateHz,
                        Seed = seed,
                        MassKg = 55 + (8 * seed),
                        StandAfterS = 2,
                        PushPart = 1.7,
                        PushS = 0.42,
                    };
                    Measure flight = Measured(jump, thresholdN).Find(MeasureNames.FlightTime)!;
                    Assert.InRange(
                        flight.Value,
                        jump.FlightS - (3 * flight.StandardUncertainty),
                        jump.FlightS + (3 * flight.StandardUncertainty)
                    );
                    // What was cut off is not known better than what was seen.
                    Assert.True(
                        flight.StandardUncertainty
                            > Measured(jump, -100).Find(MeasureNames.FlightTime)!.StandardUncertainty
                    );
                }
            }
        }
    }
}
