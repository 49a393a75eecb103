using System.Collections.Immutable;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using NodaTime;

namespace Jumpwright.Athletes.Profiles;

/// <summary>What the finders look things up in: current measures, screens, and how old either may be.</summary>
internal sealed class Known(History history, LocalDate asOf, ImmutableArray<Evidence> current)
{
    internal History History { get; } = history;

    internal LocalDate AsOf { get; } = asOf;

    internal ImmutableArray<Evidence> Current { get; } = current;

    internal int FreshDays { get; } =
        (int)
            (history.Athlete.Operation is null ? ProfileLimits.FreshDays : ProfileLimits.FreshDaysAfterOperation).Value;

    internal bool IsFresh(LocalDate day) => Period.DaysBetween(day, AsOf) <= FreshDays;

    /// <summary>Current measures of that name and task on both legs, the freshest first, plates before mats before cameras.</summary>
    internal IEnumerable<Evidence> All(string measure, JumpTask task) =>
        Current
            .Where(e => e.Measure.Name == measure && e.Task == task)
            .Where(e => e.Limb is null or Limb.Both)
            .OrderByDescending(e => e.Date)
            .ThenBy(e => e.Device);

    internal Evidence? Find(string measure, JumpTask task) => All(measure, task).FirstOrDefault();

    /// <summary>Mean of the latest day's results of a screen for that side, or null.</summary>
    internal Evidence? Screen(string test, Side side, string unit, double singleUncertainty)
    {
        ScreenResult[] latest =
        [
            .. History
                .Screens.Where(s => s.Test == test && s.Date <= AsOf)
                .Where(s => side is Side.Both ? s.Side is Side.Both or Side.Unknown : s.Side == side)
                .GroupBy(s => s.Date)
                .OrderByDescending(g => g.Key)
                .FirstOrDefault()
                ?? Enumerable.Empty<ScreenResult>(),
        ];
        return latest.Length == 0
            ? null
            : new Evidence(
                new Measure(
                    test,
                    latest.Average(s => s.Value),
                    new Unit(unit),
                    singleUncertainty / Math.Sqrt(latest.Length),
                    "by hand, mean of the day"
                ),
                latest[0].Date,
                "screens.csv",
                latest.Length,
                null,
                Limb: side switch
                {
                    Side.Left => Limb.Left,
                    Side.Right => Limb.Right,
                    _ => null,
                }
            )
            {
                Trials = latest.Length,
                TrialSd = singleUncertainty,
            };
    }
}
