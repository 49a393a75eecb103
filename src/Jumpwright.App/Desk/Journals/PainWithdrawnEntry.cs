using System.Text.Json.Serialization;

namespace Jumpwright.App.Desk.Journals;

/// <summary>A pain that was tapped by mistake, taken back by somebody who says so with a name.</summary>
/// <param name="Pain">Id of the entry of the pain.</param>
/// <param name="By">Who takes it back: a person, not a tablet.</param>
internal sealed record PainWithdrawnEntry(
    [property: JsonPropertyName("pain")] string Pain,
    [property: JsonPropertyName("by")] string By
);
