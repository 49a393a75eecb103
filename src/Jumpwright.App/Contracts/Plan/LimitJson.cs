using System.Text.Json.Serialization;
using Jumpwright.Plans;

namespace Jumpwright.App.Contracts;

/// <summary>How near the plan came to one limit.</summary>
internal sealed record LimitJson(
    [property: JsonPropertyName("id")] string Id,
    [property: JsonPropertyName("athlete")] string? Athlete,
    [property: JsonPropertyName("sense")] string Sense,
    [property: JsonPropertyName("unit")] string Unit,
    [property: JsonPropertyName("period")] string Period,
    [property: JsonPropertyName("limit")] double Limit,
    [property: JsonPropertyName("highest")] double? Highest,
    [property: JsonPropertyName("lowest")] double? Lowest,
    [property: JsonPropertyName("at")] string? At
)
{
    public static LimitJson Of(LimitReading reading) =>
        new(
            reading.Id,
            reading.AthleteId,
            reading.Sense,
            reading.Unit,
            reading.Period,
            reading.Limit,
            reading.Highest,
            reading.Lowest,
            reading.At
        );
}
