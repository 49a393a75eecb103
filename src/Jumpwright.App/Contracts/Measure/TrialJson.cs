using System.Collections.Immutable;
using System.Text.Json.Serialization;
using Jumpwright.App.Intake;
using Jumpwright.Athletes;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Trials;

namespace Jumpwright.App.Contracts;

/// <summary>One line of <c>jumpwright measure --json</c> (contracts §2). Fields are added, never renamed.</summary>
internal sealed record TrialJson(
    [property: JsonPropertyName("schema")] int Schema,
    [property: JsonPropertyName("file")] string File,
    [property: JsonPropertyName("trial")] int Trial,
    [property: JsonPropertyName("sha256")] string? Sha256,
    [property: JsonPropertyName("version")] string Version,
    [property: JsonPropertyName("task")] string? Task,
    [property: JsonPropertyName("verdict")] string Verdict,
    [property: JsonPropertyName("reason")] string? Reason,
    [property: JsonPropertyName("warnings")] ImmutableArray<string> Warnings,
    [property: JsonPropertyName("doubtful")] ImmutableArray<string> Doubtful,
    [property: JsonPropertyName("events")] EventsJson Events,
    [property: JsonPropertyName("measures")] IReadOnlyDictionary<string, MeasureJson> Measures,
    [property: JsonPropertyName("contacts"), JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
        IReadOnlyList<HopContactJson>? Contacts
)
{
    /// <summary>The lines of one recording: one a trial, or one that says why it was refused.</summary>
    public static IEnumerable<TrialJson> Of(MeasuredFile file) =>
        file.Measured.Trials.TryGet(out ImmutableArray<Trial> trials, out Refusal? refusal)
            ? trials.Select(t => Measured(file.Listed.File, file.Sha256, t))
            : [Refused(file, refusal)];

    /// <summary>A measured trial of a squad.</summary>
    public static TrialJson Of(MeasuredTrial trial) => Measured(trial.File, trial.Sha256, trial.Trial);

    /// <summary>The same but for its measures.</summary>
    public static TrialJson WithoutMeasures(MeasuredTrial trial) =>
        Measured(trial.File, trial.Sha256, trial.Trial with { Measures = [] });

    private static TrialJson Measured(string file, string? sha256, Trial trial) =>
        new(
            ContractJson.Schema,
            file,
            trial.Number,
            sha256,
            ProductVersion.Current,
            trial.Task.Id(),
            "measured",
            null,
            trial.Warnings,
            trial.Doubtful,
            EventsJson.Of(trial.Events),
            // An ordered dictionary: the measures keep the order of the contract.
            new OrderedDictionary<string, MeasureJson>(
                trial.Measures.Select(m => KeyValuePair.Create(m.Name, MeasureJson.Of(m)))
            ),
            trial.Task is JumpTask.RepeatedHops ? [.. trial.Contacts.Select(HopContactJson.Of)] : null
        );

    private static TrialJson Refused(MeasuredFile file, Refusal refusal) =>
        new(
            ContractJson.Schema,
            file.Listed.File,
            1,
            file.Sha256,
            ProductVersion.Current,
            file.Measured.Labels.Task?.Id(),
            "refused",
            refusal.Sentence,
            [],
            [],
            EventsJson.None,
            new OrderedDictionary<string, MeasureJson>(),
            null
        );
}
