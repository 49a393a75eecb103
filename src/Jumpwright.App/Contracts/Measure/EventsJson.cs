using System.Text.Json.Serialization;
using Jumpwright.Trials;

namespace Jumpwright.App.Contracts;

/// <summary>Instants on the recording's own clock, s, in order of time. Those that do not apply are absent.</summary>
internal sealed record EventsJson(
    [property: JsonPropertyName("first_touch_down_s"), JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
        double? FirstTouchDown,
    [property: JsonPropertyName("onset_s"), JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] double? Onset,
    [property:
        JsonPropertyName("peak_downward_velocity_s"),
        JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)
    ]
        double? PeakDownwardVelocity,
    [property: JsonPropertyName("bottom_s"), JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
        double? Bottom,
    [property: JsonPropertyName("take_off_s"), JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
        double? TakeOff,
    [property: JsonPropertyName("touch_down_s"), JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
        double? TouchDown,
    [property: JsonPropertyName("stable_s"), JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] double? Stable
)
{
    public static readonly EventsJson None = Of(new TrialEvents());

    public static EventsJson Of(TrialEvents events) =>
        new(
            events.FirstTouchDownS,
            events.OnsetS,
            events.PeakDownwardVelocityS,
            events.BottomS,
            events.TakeOffS,
            events.TouchDownS,
            events.StableS
        );
}
