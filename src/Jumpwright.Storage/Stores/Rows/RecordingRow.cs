using Jumpwright.Recordings;

namespace Jumpwright.Storage.Stores.Rows;

/// <summary>A recording of the squad folder: which bytes it holds and which measurement of them counts.</summary>
internal sealed class RecordingRow
{
    /// <summary>Relative to the folder, with <c>/</c>.</summary>
    public required string File { get; init; }

    /// <summary>Place in the order of contracts §2, from 1.</summary>
    public int Position { get; set; }

    /// <summary>Null when there were no bytes to read.</summary>
    public string? Sha256 { get; set; }

    /// <summary>Null when it was refused before it was opened.</summary>
    public string? MeasurementId { get; set; }

    /// <summary>Why it was refused before it was opened.</summary>
    public string? Refusal { get; set; }

    /// <summary>The kind of that refusal; null as well where a version that kept none wrote it.</summary>
    public RefusedFor? RefusedFor { get; set; }

    /// <summary>Whose it is by the manifest, if it was refused before it was opened.</summary>
    public string? AthleteId { get; set; }
}
