using System.Text.Json.Serialization;

namespace Jumpwright.App.Desk.Journals;

/// <summary>How many of a kind of kit are at hand on the day of a session, as somebody on the floor counted.</summary>
/// <param name="Kit">Id of the kind.</param>
/// <param name="Count">How many; more than the squad has counts as what it has.</param>
internal sealed record KitEntry(
    [property: JsonPropertyName("kit")] string Kit,
    [property: JsonPropertyName("count")] int Count
);
