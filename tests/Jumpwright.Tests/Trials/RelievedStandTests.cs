using Jumpwright.Recordings;
using Jumpwright.Trials;

namespace Jumpwright.Tests.Trials;

/// <summary>
/// A hand on a rail carries a part of the weight. Where the plate never sees the whole of it, the weight is too low, and the whole motion is wrong in a
/// way that shows: the athlete would leave the plate half a metre above standing height, or the zero would have to drift as no plate does.
/// </summary>
public class RelievedStandTests
{
    private static readonly PlainJump Jump = new()
    {
        NoiseN = 1,
        StandS = 2.5,
        StandAfterS = 3,
        Labels = new RecordingLabels(Task: JumpTask.BoxJump),
    };

    private static Trial Measure(PlainJump jump, Func<double, double> part)
    {
        ForceRecording whole = jump.Record();
        double[] force = [.. whole.TotalN.ToArray().Select((f, i) => f * part(i / jump.RateHz))];
        return Assert.Single(Measuring.Of(whole with { TotalN = force }).Require());
    }

    [Theory]
    [InlineData(0.05)]
    [InlineData(0.06)]
    public void AHandOnARailUntilJustBeforeABoxJump_NothingMadeOfTheWeightIsDecidedFrom(double carried)
    {
        double lets = Jump.OnsetS - 0.8;
        Trial trial = Measure(Jump, t => t < lets || t > Jump.TakeOffS ? 1 - carried : 1);
        Assert.Contains(MeasureNames.JumpHeight, trial.Doubtful);
        Assert.Contains(MeasureNames.BodyWeight, trial.Doubtful);
        Assert.Contains(trial.Warnings, w => w.Contains("carried part of the weight", StringComparison.Ordinal));
    }

    [Fact]
    public void StandingFree_TheSameJumpIsSure()
    {
        Trial trial = Measure(Jump, _ => 1);
        Assert.DoesNotContain(MeasureNames.BodyWeight, trial.Doubtful);
        Assert.DoesNotContain(trial.Warnings, w => w.Contains("standing height", StringComparison.Ordinal));
        Assert.Equal(Jump.WeightN, trial.Value(MeasureNames.BodyWeight), 1.0);
    }

    /// <summary>A hand laid on the rail after the landing lowers the later stand by some newtons: taken for drift, that would be two newtons a second.</summary>
    [Fact]
    public void AHandOnARailAfterTheLanding_IsNoDriftOfThePlate()
    {
        PlainJump jump = Jump with { Labels = new RecordingLabels(Task: JumpTask.CountermovementJump) };
        double lays = jump.TouchDownS + jump.LandingS + 0.2;
        Trial trial = Measure(jump, t => t > lays ? 1 - (0.022 * Math.Min((t - lays) / 0.3, 1)) : 1);
        Assert.Contains(MeasureNames.JumpHeight, trial.Doubtful);
    }

    /// <summary>A plate that warms up by half a newton a second still weighs.</summary>
    [Fact]
    public void AWarmingPlate_IsPutRight()
    {
        PlainJump jump = Jump with { Labels = new RecordingLabels(Task: JumpTask.CountermovementJump) };
        ForceRecording whole = jump.Record();
        double[] force = [.. whole.TotalN.ToArray().Select((f, i) => f + (0.5 * i / jump.RateHz))];
        Trial trial = Assert.Single(Measuring.Of(whole with { TotalN = force }).Require());
        Assert.DoesNotContain(MeasureNames.JumpHeight, trial.Doubtful);
        Assert.Equal(jump.HeightM, trial.Value(MeasureNames.JumpHeight), 0.006);
    }
}
