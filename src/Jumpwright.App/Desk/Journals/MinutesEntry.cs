using System.Text.Json.Serialization;

namespace Jumpwright.App.Desk.Journals;

/// <summary>How many minutes there are on the day of a session, as somebody on the floor said.</summary>
/// <param name="Minutes">min; more than planned counts as planned.</param>
internal sealed record MinutesEntry([property: JsonPropertyName("minutes")] int Minutes);
