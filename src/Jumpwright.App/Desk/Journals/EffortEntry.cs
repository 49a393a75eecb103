using System.Text.Json.Serialization;

namespace Jumpwright.App.Desk.Journals;

/// <summary>How hard a session was and how long it took: what session-RPE load is made of.</summary>
/// <param name="Rpe">0 to 10, of the whole session, as the athlete says.</param>
/// <param name="Minutes">Minutes of the whole session.</param>
internal sealed record EffortEntry(
    [property: JsonPropertyName("rpe")] double Rpe,
    [property: JsonPropertyName("minutes")] double Minutes
);
