using System.Collections.Immutable;
using System.Text.Json.Serialization;
using Jumpwright.Dosing;
using Jumpwright.Plans;

namespace Jumpwright.App.Contracts;

/// <summary>One exercise of one athlete in one session. Values that do not apply are null, never left out.</summary>
internal sealed record ItemJson(
    [property: JsonPropertyName("exercise")] string Exercise,
    [property: JsonPropertyName("sets")] int Sets,
    [property: JsonPropertyName("reps")] int Reps,
    [property: JsonPropertyName("contacts_per_rep")] int ContactsPerRep,
    [property: JsonPropertyName("contacts")] int Contacts,
    [property: JsonPropertyName("limb")] string Limb,
    [property: JsonPropertyName("start")] string Start,
    [property: JsonPropertyName("arms")] string Arms,
    [property: JsonPropertyName("intent")] string Intent,
    [property: JsonPropertyName("drop_height_m")] double? DropHeightM,
    [property: JsonPropertyName("expected_drop_height_m")] double? ExpectedDropHeightM,
    [property: JsonPropertyName("box_height_m")] double? BoxHeightM,
    [property: JsonPropertyName("external_load_kg")] double? ExternalLoadKg,
    [property: JsonPropertyName("load_basis")] string? LoadBasis,
    [property: JsonPropertyName("band_tension_standing_N")] double? BandTensionStandingN,
    [property: JsonPropertyName("band_tension_apex_N")] double? BandTensionApexN,
    [property: JsonPropertyName("run_up_steps")] int? RunUpSteps,
    [property: JsonPropertyName("run_up_speed_m_s")] double? RunUpSpeedMS,
    [property: JsonPropertyName("rest_between_reps_s")] int RestBetweenRepsS,
    [property: JsonPropertyName("rest_between_sets_s")] int RestBetweenSetsS,
    [property: JsonPropertyName("pair")] string? Pair,
    [property: JsonPropertyName("pair_role")] string? PairRole,
    [property: JsonPropertyName("rest_in_pair_s")] int? RestInPairS,
    [property: JsonPropertyName("high_intensity")] bool HighIntensity,
    [property: JsonPropertyName("because")] ImmutableArray<string> Because,
    [property: JsonPropertyName("stop_when")] string StopWhen,
    [property: JsonPropertyName("replaces_if_sore")] string? ReplacesIfSore,
    [property: JsonPropertyName("stop")] StopJson Stop,
    [property: JsonPropertyName("easy_sets")] int EasySets
)
{
    public static ItemJson Of(PlannedItem item)
    {
        Dose dose = item.Dose;
        return new ItemJson(
            dose.ExerciseId,
            item.Sets,
            dose.Reps,
            dose.ContactsPerRep,
            item.Contacts,
            dose.Limb,
            dose.Start,
            dose.Arms,
            dose.Intent,
            dose.DropHeightM,
            dose.ExpectedDropHeightM,
            dose.BoxHeightM,
            dose.ExternalLoadKg,
            dose.LoadBasis,
            dose.BandTensionStandingN,
            dose.BandTensionApexN,
            dose.RunUpSteps,
            dose.RunUpSpeedMS,
            dose.RestBetweenRepsS,
            dose.RestBetweenSetsS,
            item.Pair,
            item.PairRole,
            item.RestInPairS,
            dose.HighIntensity,
            [.. item.Because.Select(b => b.ToString())],
            dose.Stop.Sentence(),
            dose.ReplacesIfSore,
            StopJson.Of(dose.Stop),
            dose.EasySets(item.Sets)
        );
    }
}
