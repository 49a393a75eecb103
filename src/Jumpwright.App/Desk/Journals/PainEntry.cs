using System.Text.Json.Serialization;

namespace Jumpwright.App.Desk.Journals;

/// <summary>Pain said on the floor.</summary>
/// <param name="Score">0 to 10; null: a new place whose pain nobody has scored yet.</param>
/// <param name="When">rest, during, after or next-morning.</param>
/// <param name="Exercise">At which exercise; null when at none.</param>
/// <param name="Site">Where, in the athlete's word; null when not said.</param>
/// <param name="Side">left, right or both; null when not said.</param>
internal sealed record PainEntry(
    [property: JsonPropertyName("score")] double? Score,
    [property: JsonPropertyName("when")] string When,
    [property: JsonPropertyName("exercise")] string? Exercise,
    [property: JsonPropertyName("site")] string? Site,
    [property: JsonPropertyName("side")] string? Side
)
{
    /// <summary>True for a place where it had not hurt before.</summary>
    [JsonPropertyName("site_new")]
    public bool SiteNew { get; init; }

    /// <summary>The work it was said of; null at rest, and from tablets that did not say it.</summary>
    [JsonPropertyName("work")]
    public WorkEntry? Work { get; init; }

    /// <summary>The site of a pain whose place nobody said: safety knows no such place and takes the strictest rule.</summary>
    public const string PlaceNotSaid = "place not said";
}
