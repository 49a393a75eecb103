using System.Buffers;

namespace Jumpwright.Trials;

/// <summary>
/// Numbers that are needed only while one stay is measured, cut from arrays that the next one uses again. Nothing cut from
/// here may stand in a result: after <see cref="Dispose"/> it holds somebody else's numbers.
/// </summary>
internal sealed class Scratch : IDisposable
{
    private const int Chunk = 8192;

    private readonly List<double[]> _chunks = new(2);
    private int _current = -1;
    private int _used;

    /// <summary>So many noughts.</summary>
    public ArraySegment<double> Noughts(int count)
    {
        while (_current < 0 || _used + count > _chunks[_current].Length)
        {
            if (++_current == _chunks.Count)
            {
                _chunks.Add(ArrayPool<double>.Shared.Rent(Math.Max(Chunk, count)));
            }

            _used = 0;
        }

        var cut = new ArraySegment<double>(_chunks[_current], _used, count);
        _used += count;
        cut.AsSpan().Clear();
        return cut;
    }

    /// <summary>A copy of some numbers.</summary>
    public ArraySegment<double> Copy(ReadOnlySpan<double> of)
    {
        ArraySegment<double> cut = Noughts(of.Length);
        of.CopyTo(cut);
        return cut;
    }

    /// <summary>Where cutting stands, for <see cref="Return"/>.</summary>
    public (int Chunk, int Used) Mark() => (_current, _used);

    /// <summary>Takes back all that was cut since.</summary>
    public void Return((int Chunk, int Used) mark) => (_current, _used) = mark;

    public void Dispose()
    {
        foreach (double[] chunk in _chunks)
        {
            ArrayPool<double>.Shared.Return(chunk);
        }

        _chunks.Clear();
        (_current, _used) = (-1, 0);
    }
}
