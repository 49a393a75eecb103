using System.Text;

namespace Jumpwright.Simulation.Writing;

/// <summary>A growing buffer of bytes that writes numbers with fixed decimals.</summary>
internal sealed class ByteLines(int capacity)
{
    private static readonly long[] Powers = [1, 10, 100, 1_000, 10_000, 100_000, 1_000_000, 10_000_000];
    private byte[] _bytes = new byte[Math.Max(64, capacity)];
    private int _length;

    public void Byte(byte value)
    {
        Need(1);
        _bytes[_length++] = value;
    }

    public void Text(string text)
    {
        int count = Encoding.UTF8.GetByteCount(text);
        Need(count);
        _length += Encoding.UTF8.GetBytes(text, _bytes.AsSpan(_length));
    }

    /// <summary>Rounded half to even at the last decimal; up to seven decimals.</summary>
    public void Number(double value, int decimals)
    {
        Need(32);
        long scaled = (long)Math.Round(value * Powers[decimals]);
        if (scaled < 0)
        {
            _bytes[_length++] = (byte)'-';
            scaled = -scaled;
        }

        long whole = scaled / Powers[decimals];
        long rest = scaled % Powers[decimals];
        whole.TryFormat(_bytes.AsSpan(_length), out int written);
        _length += written;
        if (decimals > 0)
        {
            _bytes[_length++] = (byte)'.';
            for (int i = decimals - 1; i >= 0; i--)
            {
                _bytes[_length + i] = (byte)('0' + (rest % 10));
                rest /= 10;
            }

            _length += decimals;
        }
    }

    public byte[] ToArray() => _bytes.AsSpan(0, _length).ToArray();

    private void Need(int more)
    {
        if (_length + more > _bytes.Length)
        {
            Array.Resize(ref _bytes, Math.Max(_bytes.Length * 2, _length + more));
        }
    }
}
