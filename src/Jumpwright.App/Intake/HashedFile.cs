using System.Buffers;
using System.Security.Cryptography;
using Microsoft.Win32.SafeHandles;

namespace Jumpwright.App.Intake;

/// <summary>A file whose SHA-256 is taken on the way, of each byte once, while somebody else reads it.</summary>
internal sealed class HashedFile(SafeFileHandle handle) : IDisposable
{
    private const int Piece = 128 * 1024;

    private readonly IncrementalHash _hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
    private long _hashed;

    /// <summary>Reads from a place on.</summary>
    public int Read(Span<byte> into, long offset)
    {
        int taken = RandomAccess.Read(handle, into, offset);
        if (offset == _hashed)
        {
            _hash.AppendData(into[..taken]);
            _hashed += taken;
        }

        return taken;
    }

    /// <summary>Reads what nobody has read; gives the SHA-256 of all, in lower-case hexadecimal.</summary>
    /// <param name="length">How long the file was.</param>
    /// <returns>Null where it is longer now.</returns>
    public string? TryReadOn(long length)
    {
        byte[] piece = ArrayPool<byte>.Shared.Rent(Piece);
        try
        {
            while (Read(piece, _hashed) > 0)
            {
                if (_hashed > length)
                {
                    return null;
                }
            }

            return Convert.ToHexStringLower(_hash.GetHashAndReset());
        }
        finally
        {
            ArrayPool<byte>.Shared.Return(piece);
        }
    }

    public void Dispose() => _hash.Dispose();
}
