using Jumpwright.Recordings;
using Jumpwright.Trials;

namespace Jumpwright.Tests.Trials;

/// <summary>
/// A jump that stands well, and lands with one foot beside the plate: the plate then carries a part of the weight for as long as the
/// athlete stays there. The stand before the push weighs.
/// </summary>
public class LandedBesideTests
{
    private static readonly PlainJump Jump = new()
    {
        StandS = 1.4,
        StandAfterS = 3,
        NoiseN = 1,
    };

    private static Trial Measure(PlainJump jump, double part, RecordingLabels? labels = null, double fromS = 0)
    {
        ForceRecording whole = jump.Record();
        double[] force = [.. whole.TotalN.ToArray().Select((f, i) => i / jump.RateHz > jump.TouchDownS ? f * part : f)];
        int skip = (int)(fromS * jump.RateHz);
        return Assert.Single(
            Measuring.Of(whole with { TotalN = force.AsMemory(skip), Labels = labels ?? jump.Labels }).Require()
        );
    }

    [Theory]
    [InlineData(0.3)]
    [InlineData(0.5)]
    [InlineData(0.7)]
    [InlineData(0.85)]
    public void TheStandBeforeThePush_Weighs_AndTheLandingIsNamed(double part)
    {
        Trial trial = Measure(Jump, part);
        Assert.Equal(Jump.WeightN, trial.Value(MeasureNames.BodyWeight), 1.5);
        Assert.Equal(Jump.HeightM, trial.Value(MeasureNames.JumpHeight), 0.01);
        Assert.NotNull(trial.Events.OnsetS);
        Assert.Contains(trial.Warnings, w => w.Contains("landed beside", StringComparison.Ordinal));
        Assert.Contains(MeasureNames.PeakLandingForce, trial.Doubtful);
        Assert.Contains(MeasureNames.FlightTime, trial.Doubtful);
        Assert.DoesNotContain(MeasureNames.BodyWeight, trial.Doubtful);
        Assert.Null(trial.Find(MeasureNames.TimeToStabilisation));
        Assert.Null(trial.Find(MeasureNames.LandingNetImpulse));
    }

    [Fact]
    public void BothFeetOnThePlate_NothingIsDoubtful()
    {
        Trial trial = Measure(Jump, 1);
        Assert.Empty(trial.Doubtful);
        Assert.NotNull(trial.Find(MeasureNames.TimeToStabilisation));
    }

    /// <summary>Recorded from too late to be weighed before: the half stand alone would have the athlete arrive at a speed nobody has.</summary>
    [Fact]
    public void WeighedOnlyByTheHalfStand_NothingMadeOfTheWeightIsDecidedFrom()
    {
        Trial trial = Measure(Jump, 0.7, fromS: 0.9);
        Assert.Contains(MeasureNames.BodyWeight, trial.Doubtful);
        Assert.Contains(MeasureNames.JumpHeight, trial.Doubtful);
        Assert.Contains(trial.Warnings, w => w.Contains("not the whole weight", StringComparison.Ordinal));
    }

    /// <summary>A load that weighs more than all that stands on the plate is a slip of the pen: no body weight is made of it.</summary>
    [Theory]
    [InlineData(60)]
    [InlineData(90)]
    public void LoadThatLeavesNoAthlete_GivesNoBodyWeight(double loadKg)
    {
        Trial trial = Measure(Jump, 1, new RecordingLabels(Task: JumpTask.LoadedJump, ExternalLoadKg: loadKg));
        Assert.Null(trial.Find(MeasureNames.BodyWeight));
        Assert.Contains(MeasureNames.SystemWeight, trial.Doubtful);
        Assert.Contains(trial.Warnings, w => w.Contains("leaves no athlete", StringComparison.Ordinal));
    }
}
