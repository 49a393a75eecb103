using System.Text.Json.Serialization;

namespace Jumpwright.App.Contracts;

/// <summary>Kit one athlete needs at once.</summary>
internal sealed record KitJson(
    [property: JsonPropertyName("id")] string Id,
    [property: JsonPropertyName("count")] int Count
);
