using Jumpwright.Recordings;
using Jumpwright.Simulation.Validating;
using Jumpwright.Trials;

namespace Jumpwright.Tests.Trials;

/// <summary>
/// A plate whose zero runs away through a series of hops: by its end the empty plate reads what a tenth of the athlete weighs, and where
/// a flight ends shows no more. What is given then is still a series of contacts and flights in order of time.
/// </summary>
public class WanderingZeroTests
{
    private static Trial Hops(int number, double driftNS)
    {
        var force = (ForceRecording)
            Recording.From(Population.Clean(JumpTask.RepeatedHops, 20270211, number).Bytes).Require();
        double[] left = [.. force.LeftN.ToArray().Select((f, i) => f + (driftNS * i / force.RateHz))];
        double[] total = [.. left.Zip(force.RightN.ToArray(), (l, r) => l + r)];
        return Measuring.Of(force with { LeftN = left, TotalN = total }).Require()[0];
    }

    [Theory]
    [InlineData(5)]
    [InlineData(7)]
    [InlineData(9)]
    [InlineData(12)]
    public void NoFlightAndNoContact_EverLastsLessThanNothing(double driftNS)
    {
        for (int i = 0; i < 12; i++)
        {
            Trial trial = Hops(i, driftNS);
            Assert.All(
                trial.Contacts,
                hop =>
                {
                    Assert.InRange(hop.ContactS, 0.01, 2);
                    Assert.InRange(hop.FlightS, 0.01, 1);
                }
            );
            Assert.Contains(MeasureNames.ContactTime, trial.Doubtful);
            Assert.Contains(MeasureNames.JumpHeightFlightTime, trial.Doubtful);
            Assert.True(trial.Events.FirstTouchDownS < trial.Events.TakeOffS);
            Assert.True(trial.Events.TakeOffS < trial.Events.TouchDownS);
        }
    }

    /// <summary>A zero that runs away in a straight line through standing, flight and standing is seen in all three, and taken off.</summary>
    [Theory]
    [InlineData(-8)]
    [InlineData(-4)]
    [InlineData(5)]
    [InlineData(9)]
    public void AJumpOverAZeroThatRunsAway_IsWeighedRight_AndTheWeightIsNotDecidedFrom(double driftNS)
    {
        PlainJump jump = new() { NoiseN = 1.2 };
        ForceRecording force = jump.Record();
        double[] total = [.. force.TotalN.ToArray().Select((f, i) => f + (driftNS * i / force.RateHz))];
        Trial trial = Measuring.Of(force with { TotalN = total }).Require()[0];
        // Its zero is what it reads in flight.
        Assert.Equal(jump.WeightN, trial.Value(MeasureNames.BodyWeight), 3.0);
        Assert.Equal(jump.HeightM, trial.Value(MeasureNames.JumpHeight), 0.01);
        Assert.Contains(trial.Warnings, w => w.Contains("drifts by", StringComparison.Ordinal));
        Assert.Contains(MeasureNames.BodyWeight, trial.Doubtful);
        Assert.Contains(MeasureNames.JumpHeight, trial.Doubtful);
        Assert.DoesNotContain(trial.Warnings, w => w.Contains("believe impulse", StringComparison.Ordinal));
    }
}
