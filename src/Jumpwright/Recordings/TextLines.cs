using Jumpwright.Quantities;

namespace Jumpwright.Recordings;

/// <summary>Walks a text's lines without copying them. A line ends with LF, CRLF or a lone CR.</summary>
/// <param name="text">The text, or its beginning.</param>
/// <param name="window">Where more of it comes from; null where that is all.</param>
internal ref struct TextLines(ReadOnlySpan<byte> text, ByteWindow? window = null)
{
    /// <summary>No line of a table is longer.</summary>
    private const int MostLineBytes = 64 * 1024;

    private ReadOnlySpan<byte> _rest = text;

    /// <summary>The line last read, without its end; it stands until the next is read.</summary>
    public ReadOnlySpan<byte> Current { get; private set; }

    /// <summary>Number of the line last read; the first is 1.</summary>
    public int Number { get; private set; }

    /// <summary>Whether a line ended with CRLF or CR.</summary>
    public bool CarriageReturns { get; private set; }

    /// <summary>Whether the line last read has an end of its own.</summary>
    public bool Ended { get; private set; }

    /// <summary>Why the lines end before the text does: one is too long for any table; else null.</summary>
    public Refusal? Fault { get; private set; }

    /// <summary>Whether no line is left.</summary>
    public bool AtEnd => _rest.IsEmpty && !TryMore();

    /// <summary>Bytes that follow the line last read.</summary>
    public readonly long Bytes => _rest.Length + (window?.Unread ?? 0);

    /// <summary>Whether reading can't begin again from an earlier copy of this: the text has moved on.</summary>
    public readonly bool Moved => window is { Moved: true };

    /// <summary>What follows the line last read up to the last line feed that is at hand: whole lines only.</summary>
    public readonly ReadOnlySpan<byte> Whole => _rest[..(_rest.LastIndexOf((byte)'\n') + 1)];

    /// <summary>Whether the last line may have an end: false where it is at hand and has none.</summary>
    public readonly bool MayEndWhole => window is { Unread: > 0 } || (!_rest.IsEmpty && _rest[^1] == (byte)'\n');

    /// <summary>Passes over so many bytes of whole lines, and gets more of them.</summary>
    public void Pass(int bytes)
    {
        _rest = _rest[bytes..];
        TryMore();
    }

    public bool Next()
    {
        int end;
        do
        {
            if (AtEnd)
            {
                return false;
            }

            end = _rest[..Math.Min(_rest.Length, MostLineBytes + 1)].IndexOfAny((byte)'\n', (byte)'\r');
            if (end < 0 && _rest.Length > MostLineBytes)
            {
                return TooLong();
            }
        } while ((end < 0 || (_rest[end] == (byte)'\r' && end + 1 == _rest.Length)) && TryMore());

        if (end < 0 && window is { Unread: > 0 })
        {
            // The buffer is full of it.
            return TooLong();
        }

        Number++;
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

    private bool TooLong()
    {
        Number++;
        Fault = _rest.ContainsAnyInRange((byte)0, (byte)8)
            ? Refusals.NotText(Number)
            : Refusals.LineTooLong(Number, MostLineBytes / 1024);
        return false;
    }

    private bool TryMore()
    {
        if (window is null)
        {
            return false;
        }

        int before = _rest.Length;
        _rest = window.More(before);
        return _rest.Length > before;
    }
}
