using System.Text.Json.Serialization;
using Jumpwright.App.Wording;
using NodaTime;
using NodaTime.Text;

namespace Jumpwright.App.Desk.Journals;

/// <summary>
/// A last day that a licensed person gives a restriction written in the pages. It only ever comes earlier; past it nothing is planned until
/// such a person writes anew what is allowed, as past any last day.
/// </summary>
/// <param name="Entry">The id of the entry.</param>
/// <param name="Until">Its last day, as files have it.</param>
/// <param name="By">Who says so, by name.</param>
/// <param name="Role">In which role.</param>
internal sealed record RestrictionEndedEntry(
    [property: JsonPropertyName("entry")] string Entry,
    [property: JsonPropertyName("until")] string Until,
    [property: JsonPropertyName("by")] string By,
    [property: JsonPropertyName("role")] string Role
)
{
    /// <summary>The day, where it counts: readable, by a named person in a licensed role.</summary>
    [JsonIgnore]
    public LocalDate? Day =>
        !string.IsNullOrWhiteSpace(By)
        && RoleWords.Licensed.Contains(Role)
        && LocalDatePattern.Iso.Parse(Until ?? "") is { Success: true, Value: var day }
            ? day
            : null;
}
