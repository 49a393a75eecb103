using System.Collections.Immutable;
using System.Globalization;

namespace Jumpwright.Athletes;

/// <summary>The squad and its circumstances (squad.yaml).</summary>
/// <param name="Name">Name of the squad.</param>
/// <param name="TimeZone">IANA time zone id.</param>
/// <param name="Kit">Kit and how many.</param>
/// <param name="Windows">Weekly training windows.</param>
/// <param name="Fixtures">Fixtures, from squad.yaml or fixtures.ics.</param>
/// <param name="Policy">Free settings by key, as documented for squad.yaml.</param>
public sealed record Squad(
    string Name,
    string TimeZone,
    ImmutableArray<KitCount> Kit,
    ImmutableArray<TrainingWindow> Windows,
    ImmutableArray<Fixture> Fixtures,
    ImmutableDictionary<string, string> Policy
)
{
    /// <summary>Weekly practices of the sport, from squad.yaml.</summary>
    public ImmutableArray<Practice> Practices { get; init; } = [];

    /// <summary>The air of single days, from squad.yaml.</summary>
    public ImmutableArray<Weather> Weather { get; init; } = [];

    /// <summary>Limits that somebody set otherwise, from overrides.csv.</summary>
    public ImmutableArray<LimitOverride> Overrides { get; init; } = [];

    /// <summary>A coach's own exercise files: name and JSON text, in ordinal order of their names.</summary>
    public ImmutableArray<KeyValuePair<string, string>> ExerciseFiles { get; init; } = [];

    /// <summary>
    /// What is set otherwise for one athlete: lines of <see cref="Policy"/> that are numbers, then overrides for the squad,
    /// then those for the athlete.
    /// </summary>
    public ImmutableArray<LimitOverride> OverridesOf(string athleteId) =>
        [
            .. from line in Policy.OrderBy(p => p.Key, StringComparer.Ordinal)
            where !IsReportSetting(line.Key)
            where double.TryParse(line.Value, NumberStyles.Float, CultureInfo.InvariantCulture, out _)
            let value = double.Parse(line.Value, NumberStyles.Float, CultureInfo.InvariantCulture)
            select new LimitOverride(line.Key, null, value, LimitOverride.Policy, "written there", null, null),
            .. Overrides.Where(o => o.AthleteId is null),
            .. Overrides.Where(o => o.AthleteId == athleteId),
        ];

    /// <summary>The history with what the squad set otherwise for its athlete; one that carries its own already is left.</summary>
    public History Under(History history)
    {
        ArgumentNullException.ThrowIfNull(history);
        return history.Overrides.IsEmpty && OverridesOf(history.Athlete.Id) is { IsEmpty: false } set
            ? history with
            {
                Overrides = set,
            }
            : history;
    }

    /// <summary>True for keys of <see cref="Policy"/> that are settings of reports, not limits.</summary>
    public static bool IsReportSetting(string key) =>
        key is "watch" or "false-alarms-a-week" or "outcome"
        || key?.StartsWith("outcome-", StringComparison.Ordinal) == true;
}
