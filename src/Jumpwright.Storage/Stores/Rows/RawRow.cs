namespace Jumpwright.Storage.Stores.Rows;

/// <summary>The bytes of a recording or of a squad table, whole, by their SHA-256. Written once, never altered.</summary>
internal sealed class RawRow
{
    public required string Sha256 { get; init; }

    /// <summary>Length of the bytes, unpacked.</summary>
    public long Length { get; init; }

    /// <summary>The bytes, packed with Brotli.</summary>
    public required byte[] Packed { get; init; }
}
