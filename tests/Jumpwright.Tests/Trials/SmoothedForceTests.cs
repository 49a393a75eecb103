using Jumpwright.Recordings;
using Jumpwright.Trials;

namespace Jumpwright.Tests.Trials;

/// <summary>
/// Some laboratories smooth a force before they keep it. The impulse stays, but take-off and touch-down are smeared, both heights
/// come out too low by the same amount, and their agreement says nothing.
/// </summary>
public class SmoothedForceTests
{
    private static readonly string[] RestOnEdges =
    [
        MeasureNames.JumpHeight,
        MeasureNames.JumpHeightFlightTime,
        MeasureNames.FlightTime,
        MeasureNames.TakeOffVelocity,
    ];

    private static readonly PlainJump Jump = new() { NoiseN = 1.5, RateHz = 1000 };

    /// <summary>The mean of each sample with its neighbours on either side, as often as asked: twice is nearly a bell.</summary>
    private static ForceRecording Smoothed(ForceRecording recording, int samples, int times)
    {
        double[] force = recording.TotalN.ToArray();
        for (int again = 0; again < times; again++)
        {
            double[] before = force;
            int half = samples / 2;
            force =
            [
                .. Enumerable
                    .Range(0, before.Length)
                    .Select(i =>
                    {
                        int from = Math.Max(i - half, 0);
                        int to = Math.Min(i + half + 1, before.Length);
                        return before.AsSpan(from, to - from).ToArray().Average();
                    }),
            ];
        }

        return new ForceRecording(recording.Labels, [], 0, recording.RateHz, force, default, default);
    }

    private static Trial Measure(ForceRecording recording) => Measuring.Of(recording).Require()[0];

    [Theory]
    [InlineData(11, 2)]
    [InlineData(25, 1)]
    [InlineData(41, 1)]
    public void ASmoothedForce_IsSaidToBe_AndWhatRestsOnEdgesIsDoubtful(int samples, int times)
    {
        Trial trial = Measure(Smoothed(Jump.Record(), samples, times));
        Assert.Contains(trial.Warnings, w => w.Contains("smoothed", StringComparison.Ordinal));
        Assert.All(RestOnEdges, name => Assert.Contains(name, trial.Doubtful));
        Assert.DoesNotContain(MeasureNames.BodyWeight, trial.Doubtful);
    }

    [Theory]
    [InlineData(200, 0.3)]
    [InlineData(1000, 0.3)]
    [InlineData(1000, 0.02)]
    [InlineData(2000, 4)]
    public void AForceAsThePlateGaveIt_IsNot(double rateHz, double noiseN)
    {
        Trial trial = Measure((Jump with { RateHz = rateHz, NoiseN = noiseN }).Record());
        Assert.DoesNotContain(trial.Warnings, w => w.Contains("smoothed", StringComparison.Ordinal));
    }

    [Fact]
    public void SmoothingThatMovesNoEdge_IsLetPass()
    {
        Trial trial = Measure(Smoothed(Jump.Record(), 3, 1));
        Assert.DoesNotContain(trial.Warnings, w => w.Contains("smoothed", StringComparison.Ordinal));
        Assert.Equal(Jump.HeightM, trial.Value(MeasureNames.JumpHeight), 0.003);
    }
}
