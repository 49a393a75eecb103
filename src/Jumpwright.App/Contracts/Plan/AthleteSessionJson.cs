using System.Collections.Immutable;
using System.Text.Json.Serialization;
using Jumpwright.Plans;

namespace Jumpwright.App.Contracts;

/// <summary>What one athlete does in one session, in order.</summary>
internal sealed record AthleteSessionJson(
    [property: JsonPropertyName("athlete")] string Athlete,
    [property: JsonPropertyName("items")] ImmutableArray<ItemJson> Items
)
{
    public static AthleteSessionJson Of(AthleteSession session) =>
        new(session.AthleteId, [.. session.Items.Select(ItemJson.Of)]);
}
