using System.Collections.Immutable;
using System.Text.Json.Serialization;
using Jumpwright.Quantities;

namespace Jumpwright.App.Contracts;

/// <summary>One whole number for each tissue.</summary>
internal sealed record TissuesJson(
    [property: JsonPropertyName("achilles")] int Achilles,
    [property: JsonPropertyName("patellar")] int Patellar,
    [property: JsonPropertyName("hip")] int Hip,
    [property: JsonPropertyName("bone")] int Bone
)
{
    public static TissuesJson Of(ImmutableDictionary<Tissue, int> byTissue) =>
        new(byTissue[Tissue.Achilles], byTissue[Tissue.Patellar], byTissue[Tissue.Hip], byTissue[Tissue.Bone]);
}
