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

    /// <summary>
    /// A causal filter of second order between plate and file, as some amplifiers have one: two equal real poles would not swing, these
    /// (damped by the half root of two, as Butterworth's 1930) do. What noise there is comes in behind it and shows nothing.
    /// </summary>
    private static ForceRecording ThroughAnAmplifier(ForceRecording recording, double cutOffHz, double noiseN)
    {
        double[] force = recording.TotalN.ToArray();
        double radians = 2 * Math.PI * cutOffHz;
        double step = 1 / recording.RateHz;
        const int finer = 20;
        double reading = force[0];
        double change = 0;
        var random = new Random(3);
        double[] passed = new double[force.Length];
        for (int i = 0; i < force.Length; i++)
        {
            for (int k = 0; k < finer; k++)
            {
                change +=
                    ((radians * radians * (force[i] - reading)) - (Math.Sqrt(2) * radians * change)) * step / finer;
                reading += change * step / finer;
            }

            passed[i] =
                reading + (noiseN * (random.NextDouble() + random.NextDouble() + random.NextDouble() - 1.5) * 2);
        }

        return new ForceRecording(recording.Labels, [], 0, recording.RateHz, passed, default, default);
    }

    [Theory]
    [InlineData(18, 500)]
    [InlineData(25, 1000)]
    [InlineData(22, 2000)]
    public void AnAmplifierSlowerThanTheJump_ShowsBelowZero_AndWhatRestsOnEdgesIsDoubtful(
        double cutOffHz,
        double rateHz
    )
    {
        Trial trial = Measure(ThroughAnAmplifier((Jump with { NoiseN = 0, RateHz = rateHz }).Record(), cutOffHz, 1));
        Assert.True(
            Math.Abs(trial.Value(MeasureNames.JumpHeightFlightTime) - Jump.HeightM) > 0.01,
            "the filter is to make a height wrong by more than a centimetre"
        );
        Assert.Contains(trial.Warnings, w => w.Contains("below its zero", StringComparison.Ordinal));
        Assert.All(RestOnEdges, name => Assert.Contains(name, trial.Doubtful));
        Assert.DoesNotContain(MeasureNames.BodyWeight, trial.Doubtful);
    }

    [Fact]
    public void AnAmplifierFarFasterThanTheJump_IsLetPass()
    {
        Trial trial = Measure(ThroughAnAmplifier((Jump with { NoiseN = 0 }).Record(), 250, 1));
        Assert.DoesNotContain(trial.Warnings, w => w.Contains("below its zero", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(35, 20)]
    [InlineData(55, 40)]
    [InlineData(120, 60)]
    public void APlateThatRingsOnAndOn_ReadsTheForceRight_AndIsNoSlowOne(double hz, double newtons)
    {
        ForceRecording recording = Jump.Record();
        double[] force = recording.TotalN.ToArray();
        int from = (int)Math.Ceiling(Jump.TakeOffS * Jump.RateHz);
        for (int i = from; i < from + (int)(0.4 * Jump.RateHz); i++)
        {
            double s = (i / Jump.RateHz) - Jump.TakeOffS;
            force[i] -= newtons * Math.Exp(-6 * s) * Math.Sin(2 * Math.PI * hz * s);
        }

        Trial trial = Measure(new ForceRecording(recording.Labels, [], 0, Jump.RateHz, force, default, default));
        Assert.DoesNotContain(trial.Warnings, w => w.Contains("below its zero", StringComparison.Ordinal));
    }
}
