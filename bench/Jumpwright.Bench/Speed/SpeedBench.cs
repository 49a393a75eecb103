using System.Security.Cryptography;
using Jumpwright.Recordings;
using Jumpwright.Trials;
using Microsoft.Win32.SafeHandles;

namespace Jumpwright.Bench.Speed;

/// <summary>
/// Recordings a second from CSV files in a warm cache. Two floors stand in the same run: reading the bytes, and reading them
/// with the plainest parse of their numbers. What counts is the ratio to the second.
/// </summary>
internal static class SpeedBench
{
    public static void Run(int files, int rounds, TextWriter to)
    {
        string folder = Directory.CreateTempSubdirectory("jumpwright-bench-").FullName;
        try
        {
            byte[][] corpus = Corpus.CountermovementJumps(files);
            string[] paths = [.. corpus.Select((_, i) => Path.Combine(folder, $"cmj-{i:0000}.csv"))];
            for (int i = 0; i < files; i++)
            {
                File.WriteAllBytes(paths[i], corpus[i]);
            }

            double megabytes = corpus.Sum(f => (double)f.Length) / 1e6;
            to.WriteLine(
                $"{files} two-plate countermovement jumps, 8 s at 1000 Hz, {1000 * megabytes / files:0} kB each; "
                    + $"fastest of {rounds} interleaved rounds; {Environment.ProcessorCount} cores, .NET {Environment.Version}"
            );
            foreach (int cores in Environment.ProcessorCount > 1 ? new[] { 1, 2 } : [1])
            {
                Table(paths, megabytes, cores, rounds, to);
            }
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static void Table(string[] paths, double megabytes, int cores, int rounds, TextWriter to)
    {
        Timing[] ways =
        [
            new("read the bytes", Over(paths, cores, static bytes => bytes[^1])),
            new("read, plainest parse", Over(paths, cores, static bytes => PlainParse.Sum(bytes))),
            new("read, Recording.From", Over(paths, cores, static bytes => Read(bytes).Warnings.Length)),
            new("read, From, Measuring.Of", Over(paths, cores, static bytes => Measure(bytes))),
            new(
                "the same with SHA-256",
                Over(
                    paths,
                    cores,
                    static bytes =>
                    {
                        Span<byte> hash = stackalloc byte[32];
                        return SHA256.HashData(bytes, hash) + Measure(bytes);
                    }
                )
            ),
        ];
        Timing.Interleave(ways, rounds);
        double floor = ways[1].BestS;
        to.WriteLine();
        to.WriteLine($"{cores} core{(cores > 1 ? "s" : "")}");
        to.WriteLine($"{"way", -26} {"rec/s", 8} {"us/rec", 8} {"MB/s", 7} {"x floor", 8} {"alloc/rec", 10}");
        foreach (Timing way in ways)
        {
            to.WriteLine(
                $"{way.Name, -26} {paths.Length / way.BestS, 8:0} {1e6 * way.BestS / paths.Length, 8:0.0} {megabytes / way.BestS, 7:0} "
                    + $"{way.BestS / floor, 8:0.00} {way.AllocatedBytes / paths.Length, 10}"
            );
        }
    }

    private delegate double Use(ReadOnlySpan<byte> bytes);

    private static Recording Read(ReadOnlySpan<byte> bytes) => Recording.From(bytes).Require();

    private static double Measure(ReadOnlySpan<byte> bytes) => Measuring.Of(Read(bytes)).Require().Length;

    /// <summary>Every file once, each core taking the next one, its buffer kept.</summary>
    private static Action Over(string[] paths, int cores, Use use)
    {
        byte[][] buffers = [.. Enumerable.Range(0, cores).Select(_ => new byte[1 << 20])];
        var kept = new double[cores * 16];
        if (cores == 1)
        {
            return () =>
            {
                foreach (string path in paths)
                {
                    kept[0] += use(Load(path, buffers[0]));
                }
            };
        }

        return () =>
        {
            int next = -1;
            Thread[] threads =
            [
                .. Enumerable
                    .Range(0, cores)
                    .Select(core => new Thread(() =>
                    {
                        int i;
                        while ((i = Interlocked.Increment(ref next)) < paths.Length)
                        {
                            kept[core * 16] += use(Load(paths[i], buffers[core]));
                        }
                    })),
            ];
            Array.ForEach(threads, t => t.Start());
            Array.ForEach(threads, t => t.Join());
        };
    }

    private static ReadOnlySpan<byte> Load(string path, byte[] buffer)
    {
        using SafeFileHandle handle = File.OpenHandle(path);
        int read = RandomAccess.Read(handle, buffer, 0);
        return buffer.AsSpan(0, read);
    }
}
