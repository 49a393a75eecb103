using System.Collections.Immutable;
using System.Text.Json.Serialization;
using Jumpwright.Exercises;

namespace Jumpwright.App.Contracts;

/// <summary>One exercise of the catalogue (contracts §3).</summary>
internal sealed record ExerciseJson(
    [property: JsonPropertyName("id")] string Id,
    [property: JsonPropertyName("name")] string Name,
    [property: JsonPropertyName("stage")] string Stage,
    [property: JsonPropertyName("limb")] string Limb,
    [property: JsonPropertyName("start")] string Start,
    [property: JsonPropertyName("family")] string? Family,
    [property: JsonPropertyName("contacts_per_rep")] int ContactsPerRep,
    [property: JsonPropertyName("high_intensity")] bool HighIntensity,
    [property: JsonPropertyName("kit")] ImmutableArray<KitJson> Kit,
    [property: JsonPropertyName("minutes_per_set")] double MinutesPerSet,
    [property: JsonPropertyName("demand")] TissuesJson Demand,
    [property: JsonPropertyName("demand_values")] ImmutableArray<DemandValueJson> DemandValues,
    [property: JsonPropertyName("recovery_hours")] TissuesJson RecoveryHours,
    [property: JsonPropertyName("entry")] ImmutableArray<EntryJson> Entry,
    [property: JsonPropertyName("regressions")] ImmutableArray<string> Regressions,
    [property: JsonPropertyName("progressions")] ImmutableArray<string> Progressions,
    [property: JsonPropertyName("sources")] ImmutableArray<string> Sources
)
{
    /// <summary>
    /// Height is chosen later, by the dose; here an exercise is of high intensity when it can't be done otherwise,
    /// that is at the lowest drop its range allows.
    /// </summary>
    public static ExerciseJson Of(Exercise exercise) =>
        new(
            exercise.Id,
            exercise.Name,
            ContractWords.Kebab(exercise.Stage.ToString()),
            exercise.Limb,
            exercise.Start,
            exercise.Family,
            exercise.ContactsPerRep,
            exercise.IsHighIntensityAt(exercise.DropRangeM?.MinM),
            [.. exercise.Kit.Select(k => new KitJson(k.Id, k.Count))],
            exercise.MinutesPerSet,
            TissuesJson.Of(exercise.Demand),
            [.. exercise.DemandValues.Select(DemandValueJson.Of)],
            TissuesJson.Of(exercise.RecoveryHours),
            [.. exercise.Entry.Select(EntryJson.Of)],
            exercise.Regressions,
            exercise.Progressions,
            exercise.Sources
        );
}
