using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Trials;

namespace Jumpwright.Tests.Trials;

/// <summary>
/// A radio link that drops out for some hundredths of a second leaves a gap, which devices fill with a straight line or with the last value. The force
/// looks whole, and nobody knows what happened there.
/// </summary>
public class FilledGapTests
{
    private static readonly PlainJump Jump = new() { NoiseN = 1, StandAfterS = 3 };

    /// <summary>The jump as a file keeps it, with steps of a hundredth of a newton.</summary>
    private static double[] Written(PlainJump jump) =>
        [.. jump.Record().TotalN.ToArray().Select(f => Math.Round(f, 2))];

    private static string? Refused(PlainJump jump, double[] force) =>
        Measuring.Of(jump.Record() with { TotalN = force }).TryGet(out _, out Refusal? refusal)
            ? null
            : refusal.Sentence;

    private static double[] Filled(PlainJump jump, double fromS, double seconds, bool held)
    {
        double[] force = Written(jump);
        int from = (int)(fromS * jump.RateHz);
        int count = (int)(seconds * jump.RateHz);
        double first = force[from - 1];
        double last = force[from + count];
        for (int i = 0; i < count; i++)
        {
            force[from + i] = held ? first : Math.Round(first + ((last - first) * (i + 1) / (count + 1)), 2);
        }

        return force;
    }

    [Theory]
    [InlineData(-0.3, false)]
    [InlineData(-0.3, true)]
    [InlineData(-0.03, false)]
    [InlineData(0.02, false)]
    public void AGapInThePush_FilledByALineOrByTheLastValue_IsRefused(double afterTakeOffS, bool held)
    {
        string? sentence = Refused(Jump, Filled(Jump, Jump.TakeOffS + afterTakeOffS - 0.04, 0.06, held));
        Assert.NotNull(sentence);
        Assert.Contains("samples were lost", sentence, StringComparison.Ordinal);
    }

    /// <summary>The link comes back when the athlete has landed: the touch-down itself is missing.</summary>
    [Fact]
    public void AnEmptyPlateThatStallsOverTheTouchDown_IsRefused()
    {
        PlainJump jump = Jump with { OffsetN = 6 };
        string? sentence = Refused(jump, Filled(jump, jump.TouchDownS - 0.03, 0.06, held: true));
        Assert.NotNull(sentence);
        Assert.Contains("filled", sentence, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0.5)]
    [InlineData(1.2)]
    public void AGapInQuietStanding_HarmsNothing(double atS) =>
        Assert.Null(Refused(Jump, Filled(Jump, atS, 0.06, held: false)));

    /// <summary>Some exports write nothing below a limit: a plate that is cut off so has lost no sample.</summary>
    [Theory]
    [InlineData(8)]
    [InlineData(20)]
    public void AnExportThatWritesNothingBelowALimit_HasNoGap(double limitN)
    {
        double[] force = [.. Written(Jump).Select(f => f < limitN ? 0 : f)];
        Assert.Null(Refused(Jump, force));
    }

    /// <summary>Two plates that count in steps of nearly two newtons make a sum of fine steps, and straight stretches by chance.</summary>
    [Fact]
    public void CoarseSteps_AreNoGap()
    {
        PlainJump jump = Jump with { LeftShare = 0.5, NoiseN = 0.5, RateHz = 300 };
        ForceRecording recording = jump.Record();
        double[] left = [.. recording.LeftN.ToArray().Select(f => Math.Round(Math.Round(f / 1.737) * 1.737, 2))];
        double[] right = [.. recording.RightN.ToArray().Select(f => Math.Round(Math.Round(f / 1.737) * 1.737, 2))];
        double[] total = [.. left.Zip(right, (l, r) => l + r)];
        Assert.True(Measuring.Of(recording with { TotalN = total, LeftN = left, RightN = right }).TryGet(out _, out _));
    }
}
