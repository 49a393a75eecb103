using System.Numerics;
using System.Runtime.Intrinsics;

namespace Jumpwright.Planning.Rotations;

/// <summary>
/// A session's floor while plans still change: who has which kit in which second. One athlete's blocks can be taken off and
/// placed anew among those of all others, which stay; so every plan that a search keeps has a time line.
/// </summary>
internal sealed class SessionFloor
{
    /// <summary>Tries of one athlete's order before the floor counts as full to them.</summary>
    private const int TriesMost = 40;

    private readonly Gym _gym;
    private readonly int[] _most;
    private readonly short[][] _inUse;
    private readonly ulong[][][] _full;
    private readonly FloorBlock[][] _blocks;
    private readonly int[][] _starts;
    private readonly FloorBlock[] _now = new FloorBlock[32];
    private readonly int[] _at = new int[32];
    private readonly bool[] _placed = new bool[32];
    private readonly int[] _order = new int[32];
    private int _count;
    private int _tries;

    /// <summary>An empty floor.</summary>
    /// <param name="gym">The session's times and kit.</param>
    /// <param name="kits">All kit, in the order that blocks refer to.</param>
    /// <param name="needMost">Most pieces of one kit that a block needs.</param>
    /// <param name="athletes">How many athletes.</param>
    public SessionFloor(Gym gym, IReadOnlyList<string> kits, int needMost, int athletes)
    {
        _gym = gym;
        // Whole words of 64 s, and one more.
        int words = (gym.Closes / 64) + 2;
        _most = [.. kits.Select(gym.CountOf)];
        _inUse = [.. kits.Select(_ => new short[64 * words])];
        _full = [.. kits.Select(_ => Enumerable.Range(0, needMost).Select(_ => new ulong[words]).ToArray())];
        for (int kit = 0; kit < _most.Length; kit++)
        {
            Mark(kit, 0, gym.Closes);
        }

        _blocks = [.. Enumerable.Repeat(Array.Empty<FloorBlock>(), athletes)];
        _starts = [.. Enumerable.Repeat(Array.Empty<int>(), athletes)];
    }

    /// <summary>Where an athlete's blocks stand.</summary>
    public Stand Of(int athlete) => new(_blocks[athlete], _starts[athlete]);

    /// <summary>All blocks with their starts.</summary>
    public Timeline Timeline =>
        new([
            .. Enumerable.Range(0, _blocks.Length).SelectMany(a => _blocks[a].Zip(_starts[a], (b, s) => (b.Block, s))),
        ]);

    /// <summary>Puts an athlete's blocks where they are known to have their place.</summary>
    public void Put(int athlete, Stand stand)
    {
        Use(athlete, -1);
        _blocks[athlete] = stand.Blocks;
        _starts[athlete] = stand.Starts;
        Use(athlete, 1);
    }

    /// <summary>Places an athlete's blocks anew; false, and all as it was, when no place was found.</summary>
    public bool Place(int athlete, ReadOnlySpan<FloorBlock> blocks)
    {
        Use(athlete, -1);
        blocks.CopyTo(_now);
        _count = blocks.Length;
        _tries = TriesMost;
        int left = 0;
        int low = 0;
        for (int b = 0; b < _count; b++)
        {
            _placed[b] = false;
            left += _now[b].Seconds + _gym.ChangeOver;
            low += _now[b].Block.AsWaiting;
        }

        if (_gym.Opens + left <= _gym.Closes && Next(0, _gym.Opens, left, low))
        {
            var placed = new FloorBlock[_count];
            int[] starts = new int[_count];
            for (int n = 0; n < _count; n++)
            {
                placed[n] = _now[_order[n]];
                starts[n] = _at[_order[n]];
            }

            _blocks[athlete] = placed;
            _starts[athlete] = starts;
            Use(athlete, 1);
            return true;
        }

        Use(athlete, 1);
        return false;
    }

    /// <summary>The next block of the athlete who is free at that second: the one that can begin first, then the others.</summary>
    private bool Next(int depth, int free, int left, int low)
    {
        if (depth == _count)
        {
            return true;
        }

        Span<int> start = stackalloc int[_count];
        for (int b = 0; b < _count; b++)
        {
            start[b] =
                _placed[b] || _now[b].Block.ComesAfter(low) ? int.MaxValue : Earliest(_now[b], free + _gym.ChangeOver);
        }

        while (true)
        {
            int next = -1;
            for (int b = 0; b < _count; b++)
            {
                if (start[b] != int.MaxValue && (next < 0 || Before(start, b, next)))
                {
                    next = b;
                }
            }

            // Whatever comes next begins no sooner, and all that is left must follow it.
            if (next < 0 || start[next] - _gym.ChangeOver + left > _gym.Closes || _tries-- <= 0)
            {
                return false;
            }

            FloorBlock block = _now[next];
            _placed[next] = true;
            _at[next] = start[next];
            _order[depth] = next;
            if (
                Next(
                    depth + 1,
                    start[next] + block.Seconds,
                    left - block.Seconds - _gym.ChangeOver,
                    low - block.Block.AsWaiting
                )
            )
            {
                return true;
            }

            _placed[next] = false;
            start[next] = int.MaxValue;
        }
    }

    private bool Before(Span<int> start, int one, int other) =>
        start[one] != start[other] ? start[one] < start[other]
        : _now[one].Phase == 1 != (_now[other].Phase == 1) ? _now[one].Phase == 1
        : _now[one].Kit.Length > _now[other].Kit.Length;

    private int Earliest(FloorBlock block, int from)
    {
        int latest = _gym.Closes - block.Seconds;
        latest = block.Phase == 1 ? Math.Min(latest, _gym.FreshUntil) : latest;
        int start = from;
        bool moved = true;
        while (moved && start <= latest)
        {
            moved = false;
            foreach ((int kit, int count) in block.Kit)
            {
                int after = AfterLastFull(_full[kit][count - 1], start, start + block.Seconds);
                if (after > start)
                {
                    start = after;
                    moved = true;
                }

                if (start > latest)
                {
                    return int.MaxValue;
                }
            }
        }

        return start <= latest ? start : int.MaxValue;
    }

    /// <summary>The second after the last one in the range that is full; its beginning when none is.</summary>
    private static int AfterLastFull(ulong[] full, int from, int until)
    {
        int last = (until - 1) >> 6;
        int first = from >> 6;
        for (int word = last; word >= first; word--)
        {
            ulong bits = full[word];
            if (word == last)
            {
                bits &= ulong.MaxValue >> (63 - ((until - 1) & 63));
            }

            if (word == first)
            {
                bits &= ulong.MaxValue << (from & 63);
            }

            if (bits != 0)
            {
                return (word << 6) + 64 - BitOperations.LeadingZeroCount(bits);
            }
        }

        return from;
    }

    private void Use(int athlete, short sign)
    {
        FloorBlock[] blocks = _blocks[athlete];
        for (int b = 0; b < blocks.Length; b++)
        {
            int start = _starts[athlete][b];
            foreach ((int kit, int count) in blocks[b].Kit)
            {
                Add(_inUse[kit].AsSpan(start, blocks[b].Seconds), (short)(sign * count));
                Mark(kit, start, start + blocks[b].Seconds);
            }
        }
    }

    private static void Add(Span<short> inUse, short count)
    {
        int t = 0;
        var each = Vector256.Create(count);
        for (; t + Vector256<short>.Count <= inUse.Length; t += Vector256<short>.Count)
        {
            Span<short> some = inUse.Slice(t, Vector256<short>.Count);
            (Vector256.Create((ReadOnlySpan<short>)some) + each).CopyTo(some);
        }

        for (; t < inUse.Length; t++)
        {
            inUse[t] += count;
        }
    }

    /// <summary>For every number of pieces that may be needed: the seconds in which so many are not free, 64 to a word.</summary>
    private void Mark(int kit, int from, int until)
    {
        int last = (until - 1) >> 6;
        for (int word = from >> 6; word <= last; word++)
        {
            ReadOnlySpan<short> seconds = _inUse[kit].AsSpan(word << 6, 64);
            for (int need = 1; need <= _full[kit].Length; need++)
            {
                var room = Vector256.Create((short)(_most[kit] - need));
                ulong full = 0;
                for (int part = 0; part < 4; part++)
                {
                    Vector256<short> over = Vector256.GreaterThan(
                        Vector256.Create(seconds.Slice(part << 4, Vector256<short>.Count)),
                        room
                    );
                    full |=
                        (ulong)Vector128.Narrow(over.GetLower(), over.GetUpper()).ExtractMostSignificantBits()
                        << (part << 4);
                }

                _full[kit][need - 1][word] = full;
            }
        }
    }
}
