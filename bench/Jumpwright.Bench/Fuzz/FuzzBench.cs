using System.Collections.Concurrent;

namespace Jumpwright.Bench.Fuzz;

/// <summary>Many spoiled files through reading and measuring: no crash, no hang, no memory growth. Each can be made again by its index.</summary>
internal static class FuzzBench
{
    private const double GiveUpS = 20;
    private const long Slack = 32 << 20;

    /// <summary>Whether nothing was found.</summary>
    /// <param name="runs">How many files.</param>
    /// <param name="seed">Another seed gives other files.</param>
    /// <param name="threads">How many at a time.</param>
    /// <param name="to">Progress and summary.</param>
    public static bool Run(int runs, ulong seed, int threads, TextWriter to)
    {
        var endings = new long[Enum.GetValues<FuzzEnding>().Length];
        var found = new ConcurrentDictionary<string, FuzzRun>(StringComparer.Ordinal);
        long findings = 0;
        double slowest = 0;
        long next = -1;
        var running = new (long Index, long Since)[threads];
        Thread[] workers =
        [
            .. Enumerable
                .Range(0, threads)
                .Select(me => new Thread(() =>
                {
                    long i;
                    while ((i = Interlocked.Increment(ref next)) < runs)
                    {
                        running[me] = (i, Environment.TickCount64);
                        FuzzRun run = FuzzRun.Of(seed, (ulong)i);
                        Interlocked.Increment(ref endings[(int)run.Ending]);
                        if (run.Ending == FuzzEnding.Threw || run.IsSlow || run.IsGreedy)
                        {
                            Interlocked.Increment(ref findings);
                            found.TryAdd(What(run), run);
                        }

                        if (run.Seconds > slowest)
                        {
                            slowest = run.Seconds;
                        }
                    }

                    running[me] = (-1, long.MaxValue);
                })
                {
                    IsBackground = true,
                }),
        ];
        Array.ForEach(workers, w => w.Start());
        (long first, long most) = Watch(runs, seed, () => Interlocked.Read(ref next), workers, running, to);
        bool flat = most - first <= Slack;
        to.WriteLine(
            $"{runs} files, seed {seed}: {endings[(int)FuzzEnding.ReadRefused]} refused in reading, {endings[(int)FuzzEnding.MeasureRefused]} in measuring, "
                + $"{endings[(int)FuzzEnding.Measured]} measured; slowest {slowest:0.000} s; live heap {(flat ? "flat" : "GREW")} "
                + $"({first / 1024} kB after the first tenth, {most / 1024} kB at most); {findings} findings of {found.Count} kinds."
        );
        foreach (FuzzRun run in found.Values.OrderBy(r => r.Index).Take(40))
        {
            to.WriteLine($"  bench fuzz --seed {run.Seed} --only {run.Index}: {What(run)}");
        }

        return findings == 0 && flat;
    }

    /// <summary>Runs one file again and tells what became of it.</summary>
    public static bool Only(ulong seed, ulong index, string? keep, TextWriter to)
    {
        if (keep is not null)
        {
            File.WriteAllBytes(keep, FuzzRun.File(seed, index, out _));
        }

        FuzzRun run = FuzzRun.Of(seed, index);
        to.WriteLine(
            $"{run.Ending}, {run.FileBytes} bytes, {run.Seconds:0.000} s, {run.AllocatedBytes / 1024} kB allocated: {run.Sentence}"
        );
        return run.Ending != FuzzEnding.Threw && !run.IsSlow && !run.IsGreedy;
    }

    private static string What(FuzzRun run) =>
        run.Ending == FuzzEnding.Threw ? run.Sentence
        : run.IsSlow ? $"took {run.Seconds:0.0} s"
        : $"allocated {run.AllocatedBytes >> 20} MB for {run.FileBytes} bytes";

    private static (long First, long Most) Watch(
        int runs,
        ulong seed,
        Func<long> done,
        Thread[] workers,
        (long Index, long Since)[] running,
        TextWriter to
    )
    {
        int told = 0;
        long first = 0;
        long most = 0;
        while (Array.Exists(workers, w => w.IsAlive))
        {
            Thread.Sleep(50);
            foreach ((long index, long since) in running)
            {
                if (index >= 0 && Environment.TickCount64 - since > GiveUpS * 1000)
                {
                    to.WriteLine($"HANG: bench fuzz --seed {seed} --only {index} runs for more than {GiveUpS} s.");
                    Environment.Exit(3);
                }
            }

            int tenth = (int)Math.Min(10 * (done() + 1) / Math.Max(runs, 1), 10);
            if (tenth > told)
            {
                told = tenth;
                long live = GC.GetTotalMemory(forceFullCollection: true);
                first = first == 0 ? live : first;
                most = Math.Max(most, live);
                to.WriteLine($"{tenth * 10, 3} %  live heap {live / 1024} kB");
            }
        }

        return (first, most);
    }
}
