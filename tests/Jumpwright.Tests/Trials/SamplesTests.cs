using Jumpwright.Trials;

namespace Jumpwright.Tests.Trials;

/// <summary>Questions to many samples at once are answered as one sample after the other answers them.</summary>
public class SamplesTests
{
    private static IEnumerable<double[]> Lists()
    {
        var chance = new Random(5);
        for (int n = 1; n < 70; n++)
        {
            yield return [.. Enumerable.Range(0, n).Select(_ => (chance.NextDouble() * 20) - 10)];
            yield return [.. Enumerable.Range(0, n).Select(_ => (double)chance.Next(4))];
            yield return [.. Enumerable.Range(0, n).Select(i => (double)i)];
            yield return [.. Enumerable.Range(0, n).Select(i => (double)-i)];
        }
    }

    [Fact]
    public void TheLeastAndTheGreatest_AreThoseOfAll()
    {
        foreach (double[] list in Lists())
        {
            Assert.Equal(list.Min(), Samples.Least(list));
            Assert.Equal(list.Max(), Samples.Greatest(list));
        }
    }

    [Fact]
    public void WhatStandsAtAnIndex_IsWhatSortingPutsThere()
    {
        foreach (double[] list in Lists())
        {
            double[] sorted = [.. list.Order()];
            for (int index = 0; index < list.Length; index += 1 + (list.Length / 5))
            {
                Assert.Equal(sorted[index], Samples.Nth([.. list], index));
            }
        }
    }

    [Fact]
    public void AListWithoutANumber_HasNoOrder_AndIsNotSearchedForEver() =>
        Assert.True(double.IsNaN(Samples.Nth([double.NaN, double.NaN, double.NaN], 1)));

    [Fact]
    public void HowRoughSamplesAre_IsSeenOneAfterTheOther()
    {
        foreach (double[] list in Lists().Where(l => l.Length > 2))
        {
            (double bent, double fall, double step) = Samples.Roughness(list, 0.5);
            double[] down = [.. Enumerable.Range(1, list.Length - 1).Select(i => list[i - 1] - list[i])];
            double[] bends =
            [
                .. Enumerable
                    .Range(1, list.Length - 2)
                    .Select(i => Math.Abs(list[i - 1] + list[i + 1] - (2 * list[i]))),
            ];
            Assert.Equal(bends.Max(), bent, 1e-9);
            Assert.Equal(down.Max(), fall);
            Assert.Equal(down.Select(Math.Abs).Where(s => s > 0.5).DefaultIfEmpty(double.PositiveInfinity).Min(), step);
        }
    }
}
