namespace Jumpwright.Recordings;

/// <summary>Walks a text's lines without copying them. A line ends with LF, CRLF or a lone CR.</summary>
internal ref struct TextLines(ReadOnlySpan<byte> text)
{
    private ReadOnlySpan<byte> _rest = text;

    /// <summary>The line last read, without its end.</summary>
    public ReadOnlySpan<byte> Current { get; private set; }

    /// <summary>Number of the line last read; the first is 1.</summary>
    public int Number { get; private set; }

    /// <summary>Whether a line ended with CRLF or CR.</summary>
    public bool CarriageReturns { get; private set; }

    /// <summary>Whether the line last read has an end of its own.</summary>
    public bool Ended { get; private set; }

    /// <summary>What follows the line last read.</summary>
    public readonly ReadOnlySpan<byte> Rest => _rest;

    public bool Next()
    {
        if (_rest.IsEmpty)
        {
            return false;
        }

        Number++;
        int end = _rest.IndexOfAny((byte)'\n', (byte)'\r');
        if (end < 0)
        {
            Current = _rest;
            _rest = default;
            Ended = false;
            return true;
        }

        Current = _rest[..end];
        Ended = true;
        int next = end + 1;
        if (_rest[end] == (byte)'\r')
        {
            CarriageReturns = true;
            if (next < _rest.Length && _rest[next] == (byte)'\n')
            {
                next++;
            }
        }

        _rest = _rest[next..];
        return true;
    }
}
