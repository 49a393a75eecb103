using System.Diagnostics;

namespace Jumpwright.Bench.Speed;

/// <summary>
/// One way of going through all files, timed in rounds. Rounds of the ways compared are interleaved, so that a slow minute
/// of the machine falls on all of them, and the fastest round stands for the way.
/// </summary>
internal sealed class Timing(string name, Action all)
{
    private double _bestS = double.PositiveInfinity;

    public string Name => name;

    /// <summary>Seconds of the fastest round.</summary>
    public double BestS => _bestS;

    /// <summary>Bytes allocated in a round, the least seen.</summary>
    public long AllocatedBytes { get; private set; } = long.MaxValue;

    public void Round()
    {
        long before = GC.GetTotalAllocatedBytes(precise: true);
        long start = Stopwatch.GetTimestamp();
        all();
        _bestS = Math.Min(_bestS, Stopwatch.GetElapsedTime(start).TotalSeconds);
        AllocatedBytes = Math.Min(AllocatedBytes, GC.GetTotalAllocatedBytes(precise: true) - before);
    }

    /// <summary>Rounds of all the ways in turn, after enough of them for the compiler to settle.</summary>
    public static void Interleave(IReadOnlyList<Timing> ways, int rounds)
    {
        for (int warm = 0; warm < 3; warm++)
        {
            foreach (Timing way in ways)
            {
                way.Round();
            }

            Thread.Sleep(200);
        }

        foreach (Timing way in ways)
        {
            way._bestS = double.PositiveInfinity;
        }

        for (int round = 0; round < rounds; round++)
        {
            foreach (Timing way in ways)
            {
                way.Round();
            }
        }
    }
}
