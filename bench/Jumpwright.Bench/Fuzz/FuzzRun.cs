using System.Collections.Immutable;
using System.Diagnostics;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Simulation.Chance;
using Jumpwright.Trials;

namespace Jumpwright.Bench.Fuzz;

/// <summary>What became of one spoiled file.</summary>
/// <param name="Seed">Seed of the run.</param>
/// <param name="Index">Which file of the run; with the seed it makes the same file again.</param>
/// <param name="Ending">read-refused, measured, measure-refused, or the exception.</param>
/// <param name="Sentence">The refusal's sentence, or where the exception was thrown.</param>
/// <param name="Seconds">How long reading and measuring took.</param>
/// <param name="AllocatedBytes">What they allocated.</param>
/// <param name="FileBytes">Size of the file.</param>
internal sealed record FuzzRun(
    ulong Seed,
    ulong Index,
    FuzzEnding Ending,
    string Sentence,
    double Seconds,
    long AllocatedBytes,
    int FileBytes
)
{
    /// <summary>Longer is a hang, s.</summary>
    public const double LongestS = 1;

    /// <summary>No count in a file may make reading allocate far more than the file could hold: per byte, and in any case.</summary>
    private const int MostPerByte = 400;

    private const long MostAnyway = 32 << 20;

    public bool IsSlow => Seconds > LongestS;

    public bool IsGreedy => AllocatedBytes > MostAnyway + ((long)MostPerByte * FileBytes);

    /// <summary>
    /// Makes the file of that index, reads it and measures it. On a busy machine a thread may be kept waiting, so what was slow
    /// is tried twice more and the fastest counts: a hang is slow every time.
    /// </summary>
    public static FuzzRun Of(ulong seed, ulong index)
    {
        FuzzRun run = Once(seed, index);
        for (int again = 0; again < 2 && run.IsSlow; again++)
        {
            FuzzRun other = Once(seed, index);
            run = other.Seconds < run.Seconds ? other : run;
        }

        return run;
    }

    private static FuzzRun Once(ulong seed, ulong index)
    {
        byte[] bytes = File(seed, index, out JumpTask? task);
        long before = GC.GetAllocatedBytesForCurrentThread();
        long start = Stopwatch.GetTimestamp();
        (FuzzEnding ending, string sentence) = Ended(bytes, task);
        return new FuzzRun(
            seed,
            index,
            ending,
            sentence,
            Stopwatch.GetElapsedTime(start).TotalSeconds,
            GC.GetAllocatedBytesForCurrentThread() - before,
            bytes.Length
        );
    }

    /// <summary>The file of that index, and the task it is measured as; null takes its own.</summary>
    public static byte[] File(ulong seed, ulong index, out JumpTask? task)
    {
        var random = SeededRandom.For(seed, index);
        byte[] bytes = Mutations.Of(random);
        task = random.Chance(0.4) ? (JumpTask)random.Below(JumpTasks.All.Count) : null;
        return bytes;
    }

    private static (FuzzEnding Ending, string Sentence) Ended(byte[] bytes, JumpTask? task)
    {
        try
        {
            RecordingLabels? labels = task is null ? null : new RecordingLabels(Task: task);
            if (!Recording.From(bytes, labels).TryGet(out Recording? recording, out Refusal? refusal))
            {
                return (FuzzEnding.ReadRefused, refusal.Sentence);
            }

            return Measuring.Of(recording).TryGet(out ImmutableArray<Trial> trials, out refusal)
                ? (FuzzEnding.Measured, trials.Length + " trials")
                : (FuzzEnding.MeasureRefused, refusal.Sentence);
        }
        catch (Exception e)
        {
            string where =
                e.StackTrace?.Split('\n').FirstOrDefault(l => l.Contains("Jumpwright.", StringComparison.Ordinal))
                ?? "";
            return (FuzzEnding.Threw, $"{e.GetType().Name}: {e.Message.ReplaceLineEndings(" ")} {where.Trim()}");
        }
    }
}
