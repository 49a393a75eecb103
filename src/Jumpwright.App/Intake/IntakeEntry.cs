using System.Collections.Immutable;
using System.Text.Json.Serialization;

namespace Jumpwright.App.Intake;

/// <summary>Files that were taken in together, so that they can be taken back together.</summary>
/// <param name="Number">The journal's id of this intake.</param>
/// <param name="Files">What was written into the squad folder.</param>
public sealed record IntakeEntry(
    [property: JsonPropertyName("id")] string Number,
    [property: JsonPropertyName("files")] ImmutableArray<IntakeEntry.Taken> Files
)
{
    /// <summary>What a trials.csv among them lists and nobody handed over, or what of it can't be read: sentences.</summary>
    [JsonPropertyName("not_there")]
    public ImmutableArray<string> NotThere { get; init; } = [];

    /// <summary>What was handed over and lay here already, byte for byte: it is not taken in twice, and not passed over in silence.</summary>
    [JsonPropertyName("known")]
    public ImmutableArray<Known> AlreadyHere { get; init; } = [];

    /// <summary>One file that was here already.</summary>
    /// <param name="Name">As it was handed over.</param>
    /// <param name="File">The recording with the same bytes, relative to the squad folder.</param>
    /// <param name="TakenAt">When a page took that in, ISO 8601; null where it lay in the folder.</param>
    public sealed record Known(
        [property: JsonPropertyName("name")] string Name,
        [property: JsonPropertyName("file")] string File,
        [property: JsonPropertyName("taken_at")] string? TakenAt
    );

    /// <summary>One file.</summary>
    /// <param name="File">Relative to the squad folder.</param>
    /// <param name="Sha256">Of its bytes as they were taken in.</param>
    public sealed record Taken(
        [property: JsonPropertyName("file")] string File,
        [property: JsonPropertyName("sha256")] string Sha256
    );
}
