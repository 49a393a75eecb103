using System.Collections.Immutable;
using Jumpwright.Athletes.Profiles;
using Jumpwright.Recordings;
using Jumpwright.Trials;
using NodaTime;

namespace Jumpwright.Athletes;

/// <summary>
/// How high an athlete jumps from standing: one reading, wherever it is said, drawn or reckoned with. It is the mean of a day: of the heights
/// of the latest two weeks by impulse–momentum before flight time, so that one poor recording does not change the method from one session to
/// the next; then the latest; then plates before mats before cameras (house rule).
/// </summary>
public static class StandingJump
{
    /// <summary>How old a height may be and still be taken before one in another way, days: no test counts for less than that.</summary>
    private static int LatelyDays => (int)ProfileLimits.FreshDaysAfterOperation.Value;

    /// <summary>The reading among the current measures; null where none is of a countermovement jump on both legs.</summary>
    public static Evidence? Of(IEnumerable<Evidence> current)
    {
        ArgumentNullException.ThrowIfNull(current);
        Evidence[] heights =
        [
            .. current
                .Where(e => e.Task == JumpTask.CountermovementJump && e.Limb is null or Limb.Both)
                .Where(e => IsHeight(e.Measure.Name)),
        ];
        if (heights.Length == 0)
        {
            return null;
        }

        LocalDate lately = heights.Max(e => e.Date).PlusDays(-LatelyDays);
        return heights
            .Where(e => e.Date >= lately)
            .OrderBy(e => e.Measure.Name == MeasureNames.JumpHeight ? 0 : 1)
            .ThenByDescending(e => e.Date)
            .ThenBy(e => e.Device)
            .First();
    }

    /// <summary>
    /// The reading and what the same device and method gave on earlier days, one a day in order: never another method among them. Empty
    /// where there is no reading.
    /// </summary>
    public static ImmutableArray<Evidence> Days(History history, LocalDate asOf)
    {
        ArgumentNullException.ThrowIfNull(history);
        return Of(CurrentMeasures.Of(history, asOf)) is { } reading ? CurrentMeasures.Days(history, asOf, reading) : [];
    }

    /// <summary>
    /// The mean of a trial's own day in its task, by its device: the height to name that trial with. Null where that day has none that counts.
    /// </summary>
    public static Evidence? OnDayOf(MeasuredTrial trial, History history)
    {
        ArgumentNullException.ThrowIfNull(trial);
        ArgumentNullException.ThrowIfNull(history);
        return CurrentMeasures
            .Of(history, trial.Date)
            .Where(e => e.Task == trial.Trial.Task && e.Date == trial.Date && e.Device == trial.Device)
            .Where(e => (e.Limb ?? Limb.Both) == (trial.Labels.Limb ?? Limb.Both))
            .Where(e => e.BoxM == trial.Labels.DropHeightM && e.LoadKg == trial.Labels.ExternalLoadKg)
            .Where(e => IsHeight(e.Measure.Name))
            .MinBy(e => e.Measure.Name == MeasureNames.JumpHeight ? 0 : 1);
    }

    private static bool IsHeight(string name) => name is MeasureNames.JumpHeight or MeasureNames.JumpHeightFlightTime;
}
