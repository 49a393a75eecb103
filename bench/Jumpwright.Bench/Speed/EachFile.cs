using System.Diagnostics;

namespace Jumpwright.Bench.Speed;

/// <summary>
/// One way of going through the files, where every file stands with its own fastest run. Some hundred microseconds are seldom
/// interrupted twice, so that the mean over the files says what the work takes even on a machine that others use.
/// </summary>
/// <param name="name">What it is called.</param>
/// <param name="files">How many files.</param>
/// <param name="one">Goes through one of them.</param>
internal sealed class EachFile(string name, int files, Action<int> one)
{
    private readonly double[] _bestS = [.. Enumerable.Repeat(double.PositiveInfinity, files)];
    private long _allocated = long.MaxValue;

    public string Name => name;

    /// <summary>Microseconds of a file, each file's fastest run.</summary>
    public double MicrosecondsAFile => 1e6 * _bestS.Sum() / files;

    /// <summary>Microseconds of the file in the middle, and of the slowest.</summary>
    public (double Middle, double Slowest) SpreadMicroseconds
    {
        get
        {
            double[] sorted = [.. _bestS];
            Array.Sort(sorted);
            return (1e6 * sorted[sorted.Length / 2], 1e6 * sorted[^1]);
        }
    }

    /// <summary>Bytes a file allocates, of the round that allocated least.</summary>
    public long AllocatedAFile => _allocated / files;

    public void Round()
    {
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < files; i++)
        {
            long start = Stopwatch.GetTimestamp();
            one(i);
            _bestS[i] = Math.Min(_bestS[i], Stopwatch.GetElapsedTime(start).TotalSeconds);
        }

        _allocated = Math.Min(_allocated, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    /// <summary>Rounds of all the ways in turn, once the compiler has settled.</summary>
    public static void Interleave(IReadOnlyList<EachFile> ways, int rounds)
    {
        for (int warm = 0; warm < 4; warm++)
        {
            foreach (EachFile way in ways)
            {
                way.Round();
                way.Round();
            }

            Thread.Sleep(200);
        }

        foreach (EachFile way in ways)
        {
            Array.Fill(way._bestS, double.PositiveInfinity);
        }

        for (int round = 0; round < rounds; round++)
        {
            foreach (EachFile way in ways)
            {
                way.Round();
            }
        }
    }
}
