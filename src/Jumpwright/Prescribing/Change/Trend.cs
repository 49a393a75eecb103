using System.Collections.Immutable;
using Jumpwright.Quantities;
using Jumpwright.Statistics;
using NodaTime;

namespace Jumpwright.Prescribing.Change;

/// <summary>One athlete's trend with its level, its change, and its alarms.</summary>
/// <param name="Series">The sessions.</param>
/// <param name="Noise">The squad's noise of it.</param>
/// <param name="Level">Level now.</param>
/// <param name="LevelSd">Its doubt.</param>
/// <param name="Band">The level at each session given all of them: mean and SD.</param>
/// <param name="Since">Day the change is counted from.</param>
/// <param name="Change">The change since then.</param>
/// <param name="Alarms">Sessions at which the level was no longer where it had been; empty when it is not watched.</param>
/// <param name="Watched">Whether it is one of the athlete's watched measures.</param>
/// <param name="Sentence">In plain words.</param>
public sealed record Trend(
    Series Series,
    SquadNoise Noise,
    double Level,
    double LevelSd,
    ImmutableArray<(double Level, double Sd)> Band,
    LocalDate Since,
    LevelChange Change,
    ImmutableArray<LevelAlarm> Alarms,
    bool Watched,
    Sentence Sentence
);
