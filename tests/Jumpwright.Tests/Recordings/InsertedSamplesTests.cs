using System.Globalization;
using System.Text;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Simulation.Validating;

namespace Jumpwright.Tests.Recordings;

/// <summary>
/// An export that promises a rate which the device has not: each sample written several times, or straight lines drawn between them.
/// What was measured is every so many-th sample, and no more is read.
/// </summary>
public class InsertedSamplesTests
{
    private static ForceRecording Good(int number = 0) =>
        (ForceRecording)
            Recording.From(Population.Clean(JumpTask.CountermovementJump, 20270213, number).Bytes).Require();

    private static Outcome<Recording> Written(
        ForceRecording force,
        double rateHz,
        Func<ReadOnlyMemory<double>, double[]> made
    )
    {
        double[] left = made(force.LeftN);
        double[] right = made(force.RightN);
        var text = new StringBuilder("# task: countermovement-jump\ntime_s,force_left_N,force_right_N\n");
        for (int i = 0; i < left.Length; i++)
        {
            text.Append(CultureInfo.InvariantCulture, $"{i / rateHz:0.00000},{left[i]:0.00},{right[i]:0.00}\n");
        }

        return Recording.From(Encoding.UTF8.GetBytes(text.ToString()));
    }

    private static double[] Repeated(ReadOnlyMemory<double> side, int every) =>
        [.. side.ToArray().SelectMany(f => Enumerable.Repeat(f, every))];

    private static double[] Lines(ReadOnlyMemory<double> side, int every)
    {
        double[] f = side.ToArray();
        return
        [
            .. Enumerable
                .Range(0, (f.Length - 1) * every)
                .Select(i => f[i / every] + ((f[(i / every) + 1] - f[i / every]) * (i % every) / every)),
        ];
    }

    private static double[] OneIn(ReadOnlyMemory<double> side, int every) =>
        [.. side.ToArray().Where((_, i) => i % every == 0)];

    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void EachSampleWrittenSeveralTimes_IsReadOnce(int every)
    {
        ForceRecording good = Good();
        var read = (ForceRecording)Written(good, 1000, side => Repeated(OneIn(side, every), every)).Require();
        Assert.Equal(1000.0 / every, read.RateHz, 0.01);
        Assert.Equal(0, read.StartS, 1e-6);
        Assert.Equal(OneIn(good.LeftN, every)[700], read.LeftN.Span[700], 0.006);
        Assert.Contains(read.Warnings, w => w.Contains($"Only one sample in {every}", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(2)]
    [InlineData(4)]
    [InlineData(5)]
    public void StraightLinesBetweenSamples_AreLeftOut(int every)
    {
        ForceRecording good = Good();
        var read = (ForceRecording)Written(good, 1000, side => Lines(OneIn(side, every), every)).Require();
        Assert.Equal(1000.0 / every, read.RateHz, 0.01);
        Assert.Equal(OneIn(good.RightN, every)[700], read.RightN.Span[700], 0.006);
        Assert.Contains(read.Warnings, w => w.Contains($"Only one sample in {every}", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(10)]
    [InlineData(20)]
    public void WhatWasMeasuredTooSlowly_IsRefused(int every)
    {
        Assert.False(Written(Good(), 1000, side => Lines(OneIn(side, every), every)).TryGet(out _, out Refusal? lines));
        Assert.Contains($"{1000 / every} a second", lines.Sentence, StringComparison.Ordinal);
        Assert.False(
            Written(Good(), 1000, side => Repeated(OneIn(side, every), every)).TryGet(out _, out Refusal? repeated)
        );
        Assert.Contains($"{1000 / every} a second", repeated.Sentence, StringComparison.Ordinal);
    }

    /// <summary>Written in whole newtons by a quiet plate many neighbours are alike, and yet each was measured.</summary>
    [Theory]
    [InlineData(0.01)]
    [InlineData(0.5)]
    [InlineData(1.0)]
    [InlineData(5.0)]
    public void WhateverWasMeasured_IsKept(double stepN)
    {
        for (int i = 0; i < 10; i++)
        {
            ForceRecording good = Good(i);
            var read = (ForceRecording)
                Written(good, 1000, side => [.. side.ToArray().Select(f => stepN * Math.Round(f / stepN))]).Require();
            Assert.Equal(good.TotalN.Length, read.TotalN.Length);
        }
    }
}
