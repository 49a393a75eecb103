using System.Text.Json.Serialization;

namespace Jumpwright.App.Desk.Journals;

/// <summary>Where a pain was that had been said without a place.</summary>
/// <param name="Pain">Id of the entry of the pain.</param>
/// <param name="Site">Where, as files name it.</param>
/// <param name="Side">left, right or both; null when not said.</param>
internal sealed record PainPlaceEntry(
    [property: JsonPropertyName("pain")] string Pain,
    [property: JsonPropertyName("site")] string Site,
    [property: JsonPropertyName("side")] string? Side
);
