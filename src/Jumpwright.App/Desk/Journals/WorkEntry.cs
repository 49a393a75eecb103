using System.Text.Json.Serialization;

namespace Jumpwright.App.Desk.Journals;

/// <summary>The work that a pain was said of, as it was planned: whoever reads it later knows what may have been done without being logged.</summary>
/// <param name="Sets">Sets planned, or trials of a test.</param>
/// <param name="ContactsPerSet">Ground contacts of one set or trial.</param>
/// <param name="DropHeightM">Height stepped from, m; null without a drop.</param>
/// <param name="StopsAbove">Pain of 10 above which it is to stop.</param>
/// <param name="Test">The question of the proposed test; null for planned work.</param>
internal sealed record WorkEntry(
    [property: JsonPropertyName("sets")] int Sets,
    [property: JsonPropertyName("contacts_per_set")] int ContactsPerSet,
    [property: JsonPropertyName("drop_height_m")] double? DropHeightM,
    [property: JsonPropertyName("stops_above")] double StopsAbove,
    [property: JsonPropertyName("test")] string? Test
);
