using Jumpwright.Recordings;
using Jumpwright.Trials;

namespace Jumpwright.Tests.Trials;

/// <summary>A plate near mains leads adds a wave of 50 or 60 Hz to all it reads: it is found where the force is quiet and taken off everywhere.</summary>
public class MainsHumTests
{
    [Theory]
    [InlineData(200, 50, 3.0)]
    [InlineData(250, 60, 2.0)]
    [InlineData(1000, 49.9, 4.5)]
    [InlineData(1000, 60.04, 1.0)]
    [InlineData(2000, 50.13, 5.0)]
    public void HumIsTakenOff_ThroughThePushAndTheLandingToo(double rateHz, double humHz, double humN)
    {
        double[] clean = Force(rateHz, noiseN: 1);
        double[] humming = [.. clean.Select((f, i) => f + Wave(i / rateHz, humHz, humN))];
        double[] without = new double[clean.Length];

        double found = MainsHum.TakeOut(humming, rateHz, 1, without);

        Assert.Equal(humN, found, 0.15);
        Assert.True(clean.Zip(without, (a, b) => Math.Abs(a - b)).Max() < 0.3);
    }

    [Fact]
    public void TwoPlatesThatHumEachByItsOwnMains_AndAnOvertone_AreTakenOffTogether()
    {
        const double rate = 1000;
        double[] clean = Force(rate, noiseN: 0.5);
        double[] humming =
        [
            .. clean.Select((f, i) => f + Wave(i / rate, 50, 2) + Wave(i / rate, 60, 1.5) + Wave(i / rate, 150, 0.8)),
        ];
        double[] without = new double[clean.Length];

        Assert.Equal(2, MainsHum.TakeOut(humming, rate, 0.5, without), 0.1);
        Assert.True(clean.Zip(without, (a, b) => Math.Abs(a - b)).Max() < 0.4);
    }

    [Fact]
    public void WhereNothingHums_NothingIsTakenOff()
    {
        for (int seed = 1; seed <= 200; seed++)
        {
            double[] force = Force(1000, noiseN: 2, seed);
            Assert.Equal(0, MainsHum.TakeOut(force, 1000, 2, new double[force.Length]));
        }
    }

    [Fact]
    public void APlateThatCutsOffWhatItReadsEmpty_IsLeftAsItIs()
    {
        double[] force =
        [
            .. Force(1000, noiseN: 1).Select((f, i) => f + Wave(i / 1000.0, 50, 4)).Select(f => f < 20 ? 0 : f),
        ];

        Assert.Equal(0, MainsHum.TakeOut(force, 1000, 1, new double[force.Length]));
    }

    [Fact]
    public void AJumpIsMeasuredAsIfThePlateDidNotHum_AndItIsSaid()
    {
        PlainJump jump = new() { NoiseN = 0.5 };
        ForceRecording quiet = jump.Record();
        ForceRecording humming = quiet with
        {
            TotalN = quiet.TotalN.ToArray().Select((f, i) => f + Wave(i / jump.RateHz, 50, 5)).ToArray(),
        };

        Trial expected = Measuring.Of(quiet).Require()[0];
        Trial trial = Measuring.Of(humming).Require()[0];

        Assert.Equal(expected.Value(MeasureNames.FlightTime), trial.Value(MeasureNames.FlightTime), 0.0002);
        Assert.Equal(expected.Value(MeasureNames.JumpHeight), trial.Value(MeasureNames.JumpHeight), 0.0005);
        Assert.Equal(expected.Value(MeasureNames.BodyWeight), trial.Value(MeasureNames.BodyWeight), 0.1);
        Assert.Contains(trial.Warnings, w => w.StartsWith("Mains hum of ", StringComparison.Ordinal));
        Assert.DoesNotContain(expected.Warnings, w => w.StartsWith("Mains hum", StringComparison.Ordinal));
    }

    private static double[] Force(double rateHz, double noiseN, int seed = 1) =>
        new PlainJump
        {
            RateHz = rateHz,
            NoiseN = noiseN,
            Seed = seed,
        }
            .Record()
            .TotalN.ToArray();

    private static double Wave(double t, double hz, double amplitudeN) =>
        amplitudeN * Math.Sin((2 * Math.PI * hz * t) + 0.7);
}
