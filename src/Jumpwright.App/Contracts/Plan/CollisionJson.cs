using System.Collections.Immutable;
using System.Text.Json.Serialization;
using Jumpwright.Plans;

namespace Jumpwright.App.Contracts;

/// <summary>A smallest set of requirements that can't be met together.</summary>
internal sealed record CollisionJson(
    [property: JsonPropertyName("requirements")] ImmutableArray<RequirementJson> Requirements
)
{
    public static CollisionJson Of(Collision collision) =>
        new([.. collision.Requirements.Select(r => new RequirementJson(r.Id, r.Kind, r.Text))]);
}
