using System.Text.Json.Serialization;

namespace Jumpwright.App.Contracts;

/// <summary>Another test that settles the same entry criterion, in the same sense.</summary>
internal sealed record EntryOrJson(
    [property: JsonPropertyName("test")] string Test,
    [property: JsonPropertyName("task")] string? Task,
    [property: JsonPropertyName("value")] double Value,
    [property: JsonPropertyName("unit")] string Unit,
    [property: JsonPropertyName("source")] string Source
);
