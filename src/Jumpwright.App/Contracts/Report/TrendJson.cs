using System.Text.Json.Serialization;
using Jumpwright.Prescribing.Change;
using Jumpwright.Quantities;
using Jumpwright.Recordings;

namespace Jumpwright.App.Contracts;

/// <summary>One measure of one task, limb, device, method and condition over the sessions, with the squad's noise of it.</summary>
internal sealed record TrendJson(
    [property: JsonPropertyName("measure")] string Measure,
    [property: JsonPropertyName("task")] string Task,
    [property: JsonPropertyName("limb")] string Limb,
    [property: JsonPropertyName("device")] string Device,
    [property: JsonPropertyName("method")] string Method,
    [property: JsonPropertyName("condition")] double? Condition,
    [property: JsonPropertyName("unit")] string Unit,
    [property: JsonPropertyName("sessions")] int Sessions,
    [property: JsonPropertyName("level")] double Level,
    [property: JsonPropertyName("level_standard_uncertainty")] double LevelSd,
    [property: JsonPropertyName("since")] string Since,
    [property: JsonPropertyName("chance_rose")] double Rose,
    [property: JsonPropertyName("chance_fell")] double Fell,
    [property: JsonPropertyName("watched")] bool Watched,
    [property: JsonPropertyName("alarms")] string[] Alarms,
    [property: JsonPropertyName("typical_error")] double TypicalError,
    [property: JsonPropertyName("typical_error_pct")] double TypicalErrorPct,
    [property: JsonPropertyName("icc_1_1")] double? Icc,
    [property: JsonPropertyName("smallest_worthwhile_change")] double SmallestWorthwhile,
    [property: JsonPropertyName("detectable_change_95")] double DetectableChange,
    [property: JsonPropertyName("sentence")] string Sentence
)
{
    public static TrendJson Of(Trend trend) =>
        new(
            trend.Series.Key.Measure,
            trend.Series.Key.Task.Id(),
            ContractWords.Kebab(trend.Series.Key.Limb.ToString()),
            ContractWords.Kebab(trend.Series.Key.Device.ToString()),
            trend.Series.Key.Method,
            trend.Series.Key.Condition,
            trend.Series.Unit.Symbol,
            trend.Series.Sessions.Length,
            trend.Level,
            trend.LevelSd,
            trend.Since.ToString("uuuu-MM-dd", null),
            trend.Change.Rose,
            trend.Change.Fell,
            trend.Watched,
            [.. trend.Alarms.Select(a => trend.Series.Days[a.Session].ToString("uuuu-MM-dd", null))],
            trend.Noise.TypicalError,
            trend.Noise.TypicalErrorPct,
            trend.Noise.IntraclassCorrelationOneWay,
            trend.Noise.SmallestWorthwhile,
            trend.Noise.DetectableChange,
            trend.Sentence
        );
}
