using System.Collections.Immutable;
using System.Text.Json.Serialization;
using Jumpwright.Plans;

namespace Jumpwright.App.Contracts;

/// <summary>Who is at which station when, minutes from the session's start.</summary>
internal sealed record RotationJson(
    [property: JsonPropertyName("station")] string Station,
    [property: JsonPropertyName("exercise")] string Exercise,
    [property: JsonPropertyName("start_min")] double StartMin,
    [property: JsonPropertyName("end_min")] double EndMin,
    [property: JsonPropertyName("athletes")] ImmutableArray<string> Athletes,
    [property: JsonPropertyName("easy_until_min")] double? EasyUntilMin
)
{
    public static RotationJson Of(RotationEntry entry) =>
        new(entry.Station, entry.ExerciseId, entry.StartMin, entry.EndMin, entry.AthleteIds, entry.EasyUntilMin);
}
