using System.Text.Json.Serialization;

namespace Jumpwright.App.Desk.Journals;

/// <summary>What an athlete does not do in a session, or does again.</summary>
/// <param name="Exercise">Catalogue id; null: the whole session.</param>
/// <param name="Holds">False when it may be planned again.</param>
internal sealed record TakenOutEntry(
    [property: JsonPropertyName("exercise")] string? Exercise,
    [property: JsonPropertyName("holds")] bool Holds
);
