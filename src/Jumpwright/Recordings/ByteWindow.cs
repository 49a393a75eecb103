namespace Jumpwright.Recordings;

/// <summary>A part of a file in a buffer of fixed size, which moves along the file: the whole of it is never held.</summary>
internal sealed class ByteWindow(ReadAt read, long length, ArraySegment<byte> buffer)
{
    private long _length = length;
    private long _next;
    private int _filled;

    /// <summary>Whether the beginning of the file is no longer in the buffer.</summary>
    public bool Moved { get; private set; }

    /// <summary>Bytes of the file that were not read yet.</summary>
    public long Unread => _length - _next;

    /// <summary>The beginning of the file, as far as the buffer holds it.</summary>
    public ReadOnlySpan<byte> Start()
    {
        _next = 0;
        _filled = 0;
        Moved = false;
        return Fill();
    }

    /// <summary>Keeps the last bytes of the buffer and reads on behind them; gives them with what follows.</summary>
    public ReadOnlySpan<byte> More(int kept)
    {
        if (kept < _filled && Unread > 0)
        {
            buffer.AsSpan(_filled - kept, kept).CopyTo(buffer.AsSpan());
            _filled = kept;
            Moved = true;
            return Fill();
        }

        return buffer.AsSpan(_filled - kept, kept);
    }

    private ReadOnlySpan<byte> Fill()
    {
        while (_filled < buffer.Count && Unread > 0)
        {
            int some = (int)Math.Min(buffer.Count - _filled, Unread);
            int taken = read(buffer.AsSpan(_filled, some), _next);
            if (taken <= 0)
            {
                // It was cut while it was read.
                _length = _next;
                break;
            }

            _next += taken;
            _filled += taken;
        }

        return buffer.AsSpan(0, _filled);
    }
}
