using System.Collections.Immutable;
using System.Text.Json.Serialization;
using Jumpwright.Exercises;

namespace Jumpwright.App.Contracts;

/// <summary>One entry criterion of an exercise.</summary>
internal sealed record EntryJson(
    [property: JsonPropertyName("id")] string Id,
    [property: JsonPropertyName("kind")] string Kind,
    [property: JsonPropertyName("text")] string Text,
    [property: JsonPropertyName("test")] string Test,
    [property: JsonPropertyName("task")] string? Task,
    [property: JsonPropertyName("sense")] string Sense,
    [property: JsonPropertyName("value")] double Value,
    [property: JsonPropertyName("unit")] string Unit,
    [property: JsonPropertyName("per_body_mass")] bool PerBodyMass,
    [property: JsonPropertyName("or")] ImmutableArray<EntryOrJson> Or,
    [property: JsonPropertyName("source")] string Source
)
{
    public static EntryJson Of(EntryCriterion criterion) =>
        new(
            criterion.Id,
            ContractWords.Kebab(criterion.Kind.ToString()),
            criterion.Text,
            criterion.Test,
            criterion.Task,
            criterion.Sense,
            criterion.Value,
            criterion.Unit,
            criterion.PerBodyMass,
            [.. criterion.Alternatives.Select(a => new EntryOrJson(a.Test, a.Task, a.Value, a.Unit, a.SourceId))],
            criterion.SourceId
        );
}
