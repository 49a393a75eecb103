using System.Collections.Immutable;
using System.Text.Json.Serialization;
using Jumpwright.Plans;
using Jumpwright.Quantities;

namespace Jumpwright.App.Contracts;

/// <summary>The object of <c>jumpwright plan --json</c> (contracts §3). Fields are added, never renamed.</summary>
internal sealed record PlanJson(
    [property: JsonPropertyName("schema")] int Schema,
    [property: JsonPropertyName("version")] string Version,
    [property: JsonPropertyName("status")] string Status,
    [property: JsonPropertyName("objective")] double? Objective,
    [property: JsonPropertyName("best_bound")] double? BestBound,
    [property: JsonPropertyName("objective_empty")] double? ObjectiveEmpty,
    [property: JsonPropertyName("gap")] double? Gap,
    [property: JsonPropertyName("seconds")] double Seconds,
    [property: JsonPropertyName("sessions")] ImmutableArray<SessionJson> Sessions,
    [property: JsonPropertyName("unmet")] ImmutableArray<UnmetJson> Unmet,
    [property: JsonPropertyName("collisions")] ImmutableArray<CollisionJson> Collisions,
    [property: JsonPropertyName("overrides")] ImmutableArray<OverrideJson> Overrides,
    [property: JsonPropertyName("limits")] ImmutableArray<LimitJson> Limits,
    [property: JsonPropertyName("remarks")] ImmutableArray<string> Remarks
)
{
    public static PlanJson Of(Plan plan) =>
        new(
            ContractJson.Schema,
            ProductVersion.Current,
            ContractWords.Kebab(plan.Status.ToString()),
            plan.Objective,
            plan.BestBound,
            plan.ObjectiveEmpty,
            plan.Gap,
            Math.Round(plan.Seconds, 3),
            [.. plan.Sessions.Select(SessionJson.Of)],
            [.. plan.Unmet.Select(u => new UnmetJson(u.AthleteId, u.Wanted, [.. u.Because.Select(b => b.ToString())]))],
            [.. plan.Collisions.Select(CollisionJson.Of)],
            [.. plan.Overrides.Select(OverrideJson.Of)],
            [.. plan.Limits.Select(LimitJson.Of)],
            [.. plan.Remarks.Select(r => r.ToString())]
        );

    /// <summary>One object over several lines.</summary>
    public static string Write(Plan plan) => ContractJson.Page(Of(plan));
}
