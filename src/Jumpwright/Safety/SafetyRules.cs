using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Safety.Rules;
using NodaTime;

namespace Jumpwright.Safety;

/// <summary>The room's door: what is forbidden to an athlete on a day, and why. Unknown closes, never opens.</summary>
public static class SafetyRules
{
    /// <summary>Every rule of the house; the list reads as a contents page.</summary>
    internal static ImmutableArray<SafetyRule> All { get; } =
    [
        new StopSigns(),
        new WrittenRestrictions(),
        new AfterOperation(),
        new TendonPain(),
        new JointPain(),
        new BonePain(),
        new ArmPain(),
        new LoggedPain(),
        new AfterIllness(),
        new NoRecentSymptomReport(),
        new Youth(),
        new HeavyAthleteDrops(),
    ];

    /// <summary>All rulings in force on that day; an empty list means no rule of this room stands against anything.</summary>
    /// <param name="history">What is known; only what happened up to <paramref name="day"/> counts.</param>
    /// <param name="day">The day asked about.</param>
    /// <param name="exerciseIds">
    /// Ids of the catalogue in use. Give it wherever a catalogue is at hand: a restriction that names an exercise nobody knows
    /// then closes everything ("cannot be understood") instead of forbidding nothing.
    /// </param>
    public static ImmutableArray<Ruling> For(History history, LocalDate day, IReadOnlySet<string>? exerciseIds = null)
    {
        ArgumentNullException.ThrowIfNull(history);
        SafetyCase @case = new(history, day, exerciseIds);
        return [.. All.SelectMany(rule => rule.Rule(@case))];
    }
}
