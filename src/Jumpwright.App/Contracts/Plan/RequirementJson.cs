using System.Text.Json.Serialization;

namespace Jumpwright.App.Contracts;

/// <summary>A requirement of a collision; <c>kind</c> is wish, limit or lock.</summary>
internal sealed record RequirementJson(
    [property: JsonPropertyName("id")] string Id,
    [property: JsonPropertyName("kind")] string Kind,
    [property: JsonPropertyName("text")] string Text
);
