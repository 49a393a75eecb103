using System.IO.Compression;
using Jumpwright.Storage.Stores.Rows;

namespace Jumpwright.Storage.Stores;

/// <summary>Packs bytes for keeping and unpacks them again, checked.</summary>
internal static class RawBytes
{
    /// <summary>Above this a file is no recording of a jump (an hour of two plates at 1000 Hz is about 100 MiB).</summary>
    public const long MostBytes = 256L * 1024 * 1024;

    public static RawRow Pack(ReadOnlyMemory<byte> bytes, string sha256)
    {
        using var packed = new MemoryStream();
        using (var brotli = new BrotliStream(packed, CompressionLevel.Fastest, leaveOpen: true))
        {
            brotli.Write(bytes.Span);
        }

        return new RawRow
        {
            Sha256 = sha256,
            Length = bytes.Length,
            Packed = packed.ToArray(),
        };
    }

    /// <summary>The bytes, or null when they are not what was packed.</summary>
    public static byte[]? Unpack(RawRow row)
    {
        if (row.Length is < 0 or > MostBytes)
        {
            return null;
        }

        try
        {
            using var brotli = new BrotliStream(new MemoryStream(row.Packed), CompressionMode.Decompress);
            var bytes = new byte[row.Length];
            int read = brotli.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
            return read == bytes.Length && brotli.ReadByte() < 0 && MeasurementIds.Sha256(bytes) == row.Sha256
                ? bytes
                : null;
        }
        catch (InvalidDataException)
        {
            return null;
        }
        catch (InvalidOperationException)
        {
            return null;
        }
    }
}
