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

    /// <summary>One file.</summary>
    /// <param name="File">Relative to the squad folder.</param>
    /// <param name="Sha256">Of its bytes as they were taken in.</param>
    public sealed record Taken(
        [property: JsonPropertyName("file")] string File,
        [property: JsonPropertyName("sha256")] string Sha256
    );
}
