using System.Text.Json.Serialization;
using Jumpwright.App.Contracts;

namespace Jumpwright.App.Desk.Journals;

/// <summary>
/// One set of one exercise of one athlete in one session. A set is known by these four and its number, so that two tablets that
/// log the same set log one set; the later word counts, and both are kept. Trials of a proposed test are numbered by themselves.
/// </summary>
/// <param name="Exercise">Catalogue id.</param>
/// <param name="Number">1 for the first set.</param>
/// <param name="Reps">Reps done, of each leg where each leg does them.</param>
/// <param name="Contacts">Ground contacts of the set.</param>
/// <param name="Faults">Landing faults seen; null when nobody looked.</param>
/// <param name="Undone">True when it was logged by mistake.</param>
/// <param name="DropHeightM">Height stepped from, m; null without a drop.</param>
internal sealed record SetEntry(
    [property: JsonPropertyName("exercise")] string Exercise,
    [property: JsonPropertyName("set")] int Number,
    [property: JsonPropertyName("reps")] int Reps,
    [property: JsonPropertyName("contacts")] int Contacts,
    [property: JsonPropertyName("faults")] int? Faults,
    [property: JsonPropertyName("undone")] bool Undone,
    [property: JsonPropertyName("drop_height_m")] double? DropHeightM
)
{
    /// <summary>Ended before its last rep: reps and contacts are those that were done, perhaps none.</summary>
    [JsonPropertyName("broken_off")]
    public bool BrokenOff { get; init; }

    /// <summary>The question of the proposed test that this is a trial of; null for planned work.</summary>
    [JsonPropertyName("test")]
    public string? Test { get; init; }

    /// <summary>Height of the jump or rebound, m; null when not measured.</summary>
    [JsonPropertyName("height_m")]
    public double? HeightM { get; init; }

    /// <summary>Ground contact, s; null when not measured.</summary>
    [JsonPropertyName("contact_time_s")]
    public double? ContactTimeS { get; init; }

    /// <summary>The stop rule that the test was done under, as the tablet had it.</summary>
    [JsonPropertyName("stop")]
    public TestStopJson? Stop { get; init; }
}
