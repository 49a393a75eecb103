using System.Text.Json.Serialization;

namespace Jumpwright.App.Contracts;

/// <summary>One limit as shipped.</summary>
internal sealed record LimitValueJson(
    [property: JsonPropertyName("id")] string Id,
    [property: JsonPropertyName("value")] double Value,
    [property: JsonPropertyName("unit")] string Unit,
    [property: JsonPropertyName("kind")] string Kind,
    [property: JsonPropertyName("sense")] string Sense,
    [property: JsonPropertyName("source")] string Source,
    [property: JsonPropertyName("says")] string Says,
    [property: JsonPropertyName("least")] double Least,
    [property: JsonPropertyName("most")] double? Most
);
