using System.Collections.Immutable;
using System.Text.Json.Serialization;
using Jumpwright.Exercises;
using Jumpwright.Quantities;

namespace Jumpwright.App.Contracts;

/// <summary>The object of <c>jumpwright catalogue --json</c> (contracts §3). Fields are added, never renamed.</summary>
internal sealed record CatalogueJson(
    [property: JsonPropertyName("schema")] int Schema,
    [property: JsonPropertyName("version")] string Version,
    [property: JsonPropertyName("exercises")] ImmutableArray<ExerciseJson> Exercises
)
{
    public static string Write(Catalogue catalogue) =>
        ContractJson.Page(
            new CatalogueJson(
                ContractJson.Schema,
                ProductVersion.Current,
                [.. catalogue.Exercises.Select(ExerciseJson.Of)]
            )
        );
}
