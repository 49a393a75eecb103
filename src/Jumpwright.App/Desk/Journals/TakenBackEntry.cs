using System.Text.Json.Serialization;

namespace Jumpwright.App.Desk.Journals;

/// <summary>A stop sign or a restriction that was written wrongly in the pages and does not count; both words stay in the journal.</summary>
/// <param name="Entry">The id of the entry that was wrong.</param>
/// <param name="By">Who says so, by name.</param>
internal sealed record TakenBackEntry(
    [property: JsonPropertyName("entry")] string Entry,
    [property: JsonPropertyName("by")] string By
);
