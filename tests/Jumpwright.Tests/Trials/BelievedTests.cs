using Jumpwright.Trials;

namespace Jumpwright.Tests.Trials;

/// <summary>The doubt of a number about which several things may be so.</summary>
public class BelievedTests
{
    [Fact]
    public void OneBelief_ItsStandardUncertaintyIsItsStandardDeviation()
    {
        var one = new Believed([0], [3], [1]);
        Assert.Equal(3, one.StandardUncertainty(besides: 0), 0.01);
        Assert.Equal(5, one.StandardUncertainty(besides: 4), 0.02);
        Assert.Equal(0.0455, one.Beyond(6, besides: 0), 0.0005);
    }

    [Fact]
    public void TwoNarrowBeliefsApart_TheTruthIsNeverMuchFartherThanHalfTheirDistance()
    {
        var two = new Believed([-4, 4], [0.1, 0.1], [0.5, 0.5]);
        Assert.InRange(2 * two.StandardUncertainty(besides: 0), 4.1, 4.3);
        Assert.InRange(two.Beyond(5, besides: 0), 0, 1e-6);
    }

    [Fact]
    public void WhateverIsBelieved_TwoUncertaintiesHoldExactlyWhatTheyAreToHold()
    {
        var chance = new Random(11);
        for (int draw = 0; draw < 2000; draw++)
        {
            int n = 1 + chance.Next(6);
            double[] part = [.. Enumerable.Range(0, n).Select(_ => chance.NextDouble() + 1e-3)];
            double sum = part.Sum();
            double width = Math.Pow(10, (4 * chance.NextDouble()) - 2);
            var some = new Believed(
                [.. part.Select(_ => (chance.NextDouble() - 0.5) * width)],
                [.. part.Select(_ => Math.Pow(10, (3 * chance.NextDouble()) - 2))],
                [.. part.Select(p => p / sum)]
            );
            double besides = chance.Next(2) * 0.01 * chance.NextDouble();
            double held = some.StandardUncertainty(besides) * 2;
            Assert.InRange(some.Beyond(held * 1.001, besides), 0, 0.0455);
            Assert.InRange(some.Beyond(held * 0.999, besides), 0.0455, 1);
        }
    }

    [Fact]
    public void PlusMinusTwoUncertainties_HoldTheTruthAsOftenAsTheySay()
    {
        var three = new Believed([-1.7, 0.3, 5.3], [0.6, 1.4, 0.9], [0.3, 0.6, 0.1]);
        double width = 2 * three.StandardUncertainty(besides: 0.2);
        var random = new Random(7);
        int held = 0;
        const int draws = 40_000;
        for (int i = 0; i < draws; i++)
        {
            double which = random.NextDouble();
            int k =
                which < 0.3 ? 0
                : which < 0.9 ? 1
                : 2;
            double normal =
                Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
            double deviation = Math.Sqrt((three.Deviation[k] * three.Deviation[k]) + 0.04);
            held += Math.Abs(three.Off[k] + (deviation * normal)) <= width ? 1 : 0;
        }

        Assert.Equal(0.9545, (double)held / draws, 0.004);
    }
}
