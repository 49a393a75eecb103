using System.Collections.Immutable;
using Jumpwright.Trials;

namespace Jumpwright.Prescribing.Change;

/// <summary>What is watched and how often it may cry wolf.</summary>
public sealed record ChangeOptions
{
    /// <summary>The most measures of an athlete that are watched.</summary>
    public const int MostWatched = 3;

    /// <summary>Days back that a change is counted from.</summary>
    public int DaysBack { get; init; } = 28;

    /// <summary>False alarms a squad and week over everything watched.</summary>
    public double FalseAlarmsAWeek { get; init; } = 1;

    /// <summary>
    /// Measures that are watched, chosen before looking, at most three; key <c>watch</c> of the squad's policy. Each stands for the
    /// trend with most sessions of that measure.
    /// </summary>
    public ImmutableArray<string> Watched { get; init; } =
    [MeasureNames.JumpHeight, MeasureNames.ReactiveStrengthIndex, MeasureNames.JumpHeightFlightTime];

    /// <summary>From the squad's policy: <c>watch: "jump_height_m, reactive_strength_index"</c> and <c>false-alarms-a-week: "1"</c>.</summary>
    public static ChangeOptions From(IReadOnlyDictionary<string, string> policy)
    {
        ArgumentNullException.ThrowIfNull(policy);
        var options = new ChangeOptions();
        if (policy.TryGetValue("watch", out string? watch))
        {
            ImmutableArray<string> names =
            [
                .. watch
                    .Split([',', ';', ' '], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
                    .Take(MostWatched),
            ];
            options = options with { Watched = names };
        }

        return
            policy.TryGetValue("false-alarms-a-week", out string? rate)
            && double.TryParse(rate, out double alarms)
            && alarms is > 0 and < 100
            ? options with
            {
                FalseAlarmsAWeek = alarms,
            }
            : options;
    }
}
