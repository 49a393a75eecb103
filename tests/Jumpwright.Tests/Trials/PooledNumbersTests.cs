using System.Collections.Immutable;
using Jumpwright.Recordings;
using Jumpwright.Simulation.Validating;
using Jumpwright.Trials;

namespace Jumpwright.Tests.Trials;

/// <summary>Numbers that measuring needs on the way are used again by the next recording: none of them may show in a result.</summary>
public class PooledNumbersTests
{
    /// <summary>The results themselves, and small lists on the way; a column of eight seconds is 64 000 bytes.</summary>
    private const long MostBytes = 40_000;

    private static ForceRecording[] Recordings() =>
        [
            .. Enum.GetValues<JumpTask>()
                .SelectMany(task => Enumerable.Range(0, 3).Select(n => Population.Varied(task, 41, n)))
                .Select(c => Recording.From(c.Bytes).Require())
                .OfType<ForceRecording>(),
        ];

    private static ImmutableArray<Trial> Trials(ForceRecording recording) =>
        Measuring.Of(recording).TryGet(out ImmutableArray<Trial> trials, out _) ? trials : [];

    private static string Told(ForceRecording recording) =>
        Measuring.Of(recording).TryGet(out ImmutableArray<Trial> trials, out var refusal)
            ? string.Join('\n', trials.Select(Told))
            : refusal.Sentence;

    private static string Told(Trial trial) =>
        $"{trial.Events}\n{string.Join('\n', trial.Measures)}\n{string.Join('\n', trial.Warnings)}";

    [Fact]
    public void WhatWasMeasuredBefore_StaysAndChangesNothing()
    {
        ForceRecording[] recordings = Recordings();
        string[] first = [.. recordings.Select(Told)];
        ImmutableArray<Trial>[] kept = [.. recordings.Select(Trials)];
        Array.Reverse(recordings);
        string[] again = [.. recordings.Select(Told)];
        Assert.Equal(first, again.Reverse());
        for (int i = 0; i < kept.Length; i++)
        {
            if (kept[i].Length > 0)
            {
                Assert.Equal(first[i], string.Join('\n', kept[i].Select(Told)));
            }
        }
    }

    [Fact]
    public void ManyAtOnce_AreMeasuredAsEachByItself()
    {
        ForceRecording[] recordings = Recordings();
        string[] alone = [.. recordings.Select(Told)];
        string[] together = new string[4 * recordings.Length];
        Parallel.For(0, together.Length, i => together[i] = Told(recordings[i % recordings.Length]));
        for (int i = 0; i < together.Length; i++)
        {
            Assert.Equal(alone[i % alone.Length], together[i]);
        }
    }

    [Fact]
    public void Measuring_TakesNoMemoryBySample()
    {
        var read = (ForceRecording)
            Recording.From(Population.Clean(JumpTask.CountermovementJump, 41, 1).Bytes).Require();
        Assert.True(read.TotalN.Length >= 5000);
        long least = long.MaxValue;
        for (int round = 0; round < 30; round++)
        {
            // This thread's own bytes: what other tests do meanwhile is not counted.
            long before = GC.GetAllocatedBytesForCurrentThread();
            Measuring.Of(read);
            least = Math.Min(least, GC.GetAllocatedBytesForCurrentThread() - before);
        }

        Assert.InRange(least, 1, MostBytes);
    }
}
