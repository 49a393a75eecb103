using System.Buffers;
using System.Text;

namespace Jumpwright.App.Pages;

/// <summary>A text written as UTF-8 into borrowed bytes: a page is larger than what the runtime's collector takes lightly.</summary>
internal sealed class PooledText : TextWriter
{
    private const int Usual = 256 * 1024;
    private readonly Encoder _encoder = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false).GetEncoder();
    private byte[] _bytes = ArrayPool<byte>.Shared.Rent(Usual);
    private int _length;

    public PooledText()
        : base(System.Globalization.CultureInfo.InvariantCulture) { }

    public override Encoding Encoding => Encoding.UTF8;

    /// <summary>What was written, in bytes of its own.</summary>
    public byte[] ToBytes()
    {
        Append([], flush: true);
        return _bytes.AsSpan(0, _length).ToArray();
    }

    public override void Write(char value) => Append([value]);

    public override void Write(string? value) => Append(value);

    public override void Write(char[] buffer, int index, int count) => Append(buffer.AsSpan(index, count));

    public override void Write(ReadOnlySpan<char> buffer) => Append(buffer);

    protected override void Dispose(bool disposing)
    {
        if (disposing && _bytes.Length > 0)
        {
            ArrayPool<byte>.Shared.Return(_bytes);
            _bytes = [];
        }

        base.Dispose(disposing);
    }

    private void Append(ReadOnlySpan<char> text, bool flush = false)
    {
        int most = _length + Encoding.UTF8.GetMaxByteCount(text.Length);
        if (most > _bytes.Length)
        {
            byte[] larger = ArrayPool<byte>.Shared.Rent(Math.Max(most, 2 * _bytes.Length));
            _bytes.AsSpan(0, _length).CopyTo(larger);
            ArrayPool<byte>.Shared.Return(_bytes);
            _bytes = larger;
        }

        _length += _encoder.GetBytes(text, _bytes.AsSpan(_length), flush);
    }
}
