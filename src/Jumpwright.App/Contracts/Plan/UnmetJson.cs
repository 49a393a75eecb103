using System.Collections.Immutable;
using System.Text.Json.Serialization;

namespace Jumpwright.App.Contracts;

/// <summary>Something wished that the plan does not hold, and what forbids it.</summary>
internal sealed record UnmetJson(
    [property: JsonPropertyName("athlete")] string Athlete,
    [property: JsonPropertyName("wanted")] string Wanted,
    [property: JsonPropertyName("because")] ImmutableArray<string> Because
);
