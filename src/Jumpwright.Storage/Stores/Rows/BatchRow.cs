using NodaTime;

namespace Jumpwright.Storage.Stores.Rows;

/// <summary>One import. Its clock time is the only wall-clock time that an import leaves.</summary>
internal sealed class BatchRow
{
    public int Number { get; init; }

    /// <summary>SHA-256 over everything the import reads; the same folder twice is one batch.</summary>
    public required string Fingerprint { get; set; }

    public required string Version { get; set; }

    public Instant StartedAt { get; set; }

    public bool Finished { get; set; }
}
