using System.Text.Json.Serialization;

namespace Jumpwright.App.Desk.Journals;

/// <summary>A session moved to another time.</summary>
/// <param name="Date">Its new day, as files have it.</param>
/// <param name="Start">Its new start, HH:mm.</param>
internal sealed record MovedEntry(
    [property: JsonPropertyName("date")] string Date,
    [property: JsonPropertyName("start")] string Start
);
