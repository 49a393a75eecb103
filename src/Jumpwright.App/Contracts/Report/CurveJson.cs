using System.Text.Json.Serialization;
using Jumpwright.Calculators;
using Jumpwright.Quantities;

namespace Jumpwright.App.Contracts;

/// <summary>A curve's answer with what it stands on.</summary>
internal sealed record CurveJson(
    [property: JsonPropertyName("id")] string Id,
    [property: JsonPropertyName("title")] string Title,
    [property: JsonPropertyName("values")] SortedDictionary<string, MeasureJson> Values,
    [property: JsonPropertyName("sentence")] string Sentence,
    [property: JsonPropertyName("warnings")] string[] Warnings,
    [property: JsonPropertyName("next_test")] string? NextTest,
    [property: JsonPropertyName("formula")] string Formula,
    [property: JsonPropertyName("sources")] string[] Sources,
    [property: JsonPropertyName("dispute")] string? Dispute
)
{
    public static CurveJson Of(Calculation calculation) =>
        new(
            calculation.Basis.Id,
            calculation.Basis.Title,
            new(calculation.Values.ToDictionary(v => v.Name, MeasureJson.Of), StringComparer.Ordinal),
            calculation.Sentence,
            [.. calculation.Warnings],
            calculation.NextTest,
            calculation.Basis.Formula,
            [.. calculation.Basis.SourceIds],
            calculation.Basis.Dispute
        );
}
