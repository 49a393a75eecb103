using Jumpwright.Calculators.Deciding;

namespace Jumpwright.Tests.Calculators;

public class MoreTrialsTests
{
    [Fact]
    public void NearTheThreshold_SaysHowManyMore()
    {
        // z for 0.9 is 1.2816: n = (1.2816 · 0.02 / 0.01)² = 6.57, so 7 in all, 4 more.
        MoreTrials result = TrialsNeeded.Of(new MoreTrialsInput(0.26, 0.25, 3, 0.02)).Require();
        Assert.Equal(4, result.More);
    }

    [Fact]
    public void FarFromTheThreshold_IsSettled() =>
        Assert.Equal(0, TrialsNeeded.Of(new MoreTrialsInput(0.35, 0.25, 3, 0.02)).Require().More);

    [Fact]
    public void DeviceTooCoarse_NoNumberOfTrialsSettlesIt()
    {
        MoreTrials result = TrialsNeeded.Of(new MoreTrialsInput(0.26, 0.25, 3, 0.02, 0.02)).Require();
        Assert.Null(result.More);
        Assert.Contains("another device", result.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void OnTheThreshold_IsNotSettledByMoreTrials() =>
        Assert.Null(TrialsNeeded.Of(new MoreTrialsInput(0.2501, 0.25, 3, 0.02)).Require().More);

    [Fact]
    public void NoTrialYet_IsRefused() =>
        Assert.False(TrialsNeeded.Of(new MoreTrialsInput(0.26, 0.25, 0, 0.02)).TryGet(out _, out _));
}
