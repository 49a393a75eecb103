using System.Text.Json.Serialization;

namespace Jumpwright.App.Desk.Journals;

/// <summary>What a parent or guardian said of keeping a minor's data.</summary>
/// <param name="By">Who said it.</param>
/// <param name="Given">True when they consent; false when they don't, or take it back: see <see cref="Consent"/>.</param>
internal sealed record ConsentEntry(
    [property: JsonPropertyName("by")] string By,
    [property: JsonPropertyName("given")] bool Given
);
