using Jumpwright.Recordings;
using Jumpwright.Trials;

namespace Jumpwright.Bench.Memory;

/// <summary>Measures many recordings in one process and watches what stays: live heap after a collection, and working set.</summary>
internal static class MemoryBench
{
    /// <summary>What may stay beyond the first tenth, bytes: caches of the runtime itself move by less.</summary>
    private const long Slack = 8 << 20;

    /// <summary>Whether memory stayed flat.</summary>
    public static bool Run(int recordings, TextWriter to)
    {
        byte[][] corpus = Corpus.CountermovementJumps(20);
        int tenth = Math.Max(recordings / 10, 1);
        long after = 0;
        long most = 0;
        int measured = 0;
        to.WriteLine($"{"recordings", 10} {"live heap kB", 13} {"working set kB", 15}");
        for (int i = 1; i <= recordings; i++)
        {
            measured += Measuring.Of(Recording.From(corpus[i % corpus.Length]).Require()).TryGet(out _, out _) ? 1 : 0;
            if (i % tenth == 0)
            {
                long live = GC.GetTotalMemory(forceFullCollection: true);
                after = after == 0 ? live : after;
                most = Math.Max(most, live);
                to.WriteLine($"{i, 10} {live / 1024, 13} {Environment.WorkingSet / 1024, 15}");
            }
        }

        bool flat = most - after <= Slack;
        to.WriteLine(
            $"{measured} of {recordings} measured; the live heap {(flat ? "stayed flat" : "GREW")} (most {(most - after) / 1024} kB over the first tenth)."
        );
        return flat;
    }
}
