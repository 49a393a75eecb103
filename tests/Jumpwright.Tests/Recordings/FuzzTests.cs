using Jumpwright.Bench.Fuzz;

namespace Jumpwright.Tests.Recordings;

/// <summary>A short run of the fuzz harness (bench/README.md tells how to run a long one).</summary>
public class FuzzTests
{
    private const ulong Seed = 7;

    [Fact]
    public void SpoiledFiles_NeverThrow_NorHang_NorTakeMemoryBeyondTheirSize()
    {
        for (ulong i = 0; i < 3000; i++)
        {
            FuzzRun run = FuzzRun.Of(Seed, i);
            Assert.True(
                run.Ending != FuzzEnding.Threw && !run.IsGreedy && run.Seconds < 30,
                $"bench fuzz --seed {Seed} --only {i}: {run.Ending}, {run.Seconds:0.0} s, {run.AllocatedBytes} bytes: {run.Sentence}"
            );
        }
    }

    /// <summary>Found by a run of a million: noise as loud as the force, so that the quiet level of an edge lay above the highest one.</summary>
    [Theory]
    [InlineData(26_207)]
    [InlineData(408_930)]
    [InlineData(996_100)]
    public void FilesThatOnceThrew_AreRefusedInASentence(int index)
    {
        FuzzRun run = FuzzRun.Of(51, (ulong)index);
        Assert.Equal(FuzzEnding.MeasureRefused, run.Ending);
        Assert.EndsWith(".", run.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void SpoiledFiles_EndInEveryWay_AndRefusalsAreSentences()
    {
        FuzzRun[] runs = [.. Enumerable.Range(0, 600).Select(i => FuzzRun.Of(Seed + 1, (ulong)i))];
        Assert.Equal(
            [FuzzEnding.ReadRefused, FuzzEnding.MeasureRefused, FuzzEnding.Measured],
            runs.Select(r => r.Ending).Distinct().Order()
        );
        Assert.All(
            runs.Where(r => r.Ending is FuzzEnding.ReadRefused or FuzzEnding.MeasureRefused),
            r =>
            {
                Assert.EndsWith(".", r.Sentence, StringComparison.Ordinal);
                Assert.DoesNotContain('\n', r.Sentence);
            }
        );
    }

    [Fact]
    public void File_OfASeedAndIndex_IsAlwaysTheSame() =>
        Assert.Equal(FuzzRun.File(Seed, 12, out _), FuzzRun.File(Seed, 12, out _));
}
