using System.Text.Json.Serialization;
using Jumpwright.Plans;
using NodaTime.Text;

namespace Jumpwright.App.Contracts;

/// <summary>A limit that somebody overrode, and until when.</summary>
internal sealed record OverrideJson(
    [property: JsonPropertyName("limit")] string Limit,
    [property: JsonPropertyName("who")] string Who,
    [property: JsonPropertyName("reason")] string Reason,
    [property: JsonPropertyName("until")] string Until,
    [property: JsonPropertyName("athlete")] string? Athlete,
    [property: JsonPropertyName("value")] double Value,
    [property: JsonPropertyName("standard")] double Standard,
    [property: JsonPropertyName("unit")] string Unit,
    [property: JsonPropertyName("kind")] string Kind
)
{
    public static OverrideJson Of(Override made) =>
        new(
            made.Limit,
            made.Who,
            made.Reason,
            LocalDatePattern.Iso.Format(made.Until),
            made.AthleteId,
            made.Value,
            made.Standard,
            made.Unit,
            ContractWords.Kebab(made.Kind.ToString())
        );
}
