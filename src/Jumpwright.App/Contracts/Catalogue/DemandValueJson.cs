using System.Text.Json.Serialization;
using Jumpwright.Exercises;

namespace Jumpwright.App.Contracts;

/// <summary>A number behind a tier of demand: of one contact, on one leg.</summary>
internal sealed record DemandValueJson(
    [property: JsonPropertyName("tissue")] string Tissue,
    [property: JsonPropertyName("value")] double Value,
    [property: JsonPropertyName("unit")] string Unit,
    [property: JsonPropertyName("at_drop_m")] double? AtDropM,
    [property: JsonPropertyName("estimated")] bool Estimated,
    [property: JsonPropertyName("source")] string Source
)
{
    public static DemandValueJson Of(DemandValue value) =>
        new(
            ContractWords.Kebab(value.Tissue.ToString()),
            value.Value,
            value.Unit,
            value.AtDropM,
            value.Estimated,
            value.SourceId
        );
}
