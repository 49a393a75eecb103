using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Quantities;
using NodaTime;

namespace Jumpwright.Progression;

/// <summary>What holds an athlete back whatever the numbers say: bad landings first, then time off and illness.</summary>
internal static class Holds
{
    internal const string Landing = "landing-hold";
    internal const string Drops = "drop-hold";
    internal const string TimeOff = "time-off-hold";

    /// <summary>The reason that holds everything beyond landing back, or null.</summary>
    /// <param name="history">Whose.</param>
    /// <param name="done">The log up to that day, with what was reported beside it.</param>
    /// <param name="asOf">The day.</param>
    /// <param name="options">Numbers of the ladder.</param>
    internal static RungReason? ForLandings(
        History history,
        ImmutableArray<CompletedItem> done,
        LocalDate asOf,
        LadderOptions options
    ) => FailedScreen(history, asOf, options) ?? LoggedFaults(done, options);

    /// <summary>
    /// The reason that holds the highest stage an athlete has earned back, after illness or a long time off, until
    /// enough sessions were done since; or null.
    /// </summary>
    /// <param name="history">Whose.</param>
    /// <param name="sound">The log up to that day without what went wrong.</param>
    /// <param name="asOf">The day.</param>
    /// <param name="options">Numbers of the ladder.</param>
    internal static RungReason? ForTimeOff(
        History history,
        ImmutableArray<CompletedItem> sound,
        LocalDate asOf,
        LadderOptions options
    )
    {
        ImmutableArray<LocalDate> days = [.. sound.Select(c => c.Date).Distinct().Order()];
        LocalDate? ill = history
            .Symptoms.Where(s => s.Kind == "illness" && s.Date <= asOf && s.Date > asOf.PlusDays(-options.FreshDays))
            .Select(s => (LocalDate?)s.Date)
            .Max();
        if (ill is { } sick && days.Count(d => d > sick) < options.SessionsToComeBack)
        {
            return Hold($"ill on {sick}", sick, days.Count(d => d > sick), options);
        }

        for (int i = days.Length - 1; i >= 0; i--)
        {
            int back = days.Length - 1 - i;
            if (back >= options.SessionsToComeBack)
            {
                return null;
            }

            LocalDate next = i + 1 < days.Length ? days[i + 1] : asOf;
            int off = Period.DaysBetween(days[i], next);
            if (off > options.DaysOff)
            {
                return Hold($"{off} days without a good session after {days[i]}", days[i], back, options);
            }
        }

        return null;
    }

    private static RungReason Hold(Sentence why, LocalDate since, int back, LadderOptions options) =>
        new(
            TimeOff,
            CriterionVerdict.NotMet,
            $"One stage lower: {why}; {back} of {options.SessionsToComeBack} good sessions since.",
            null,
            since,
            $"two sessions of the stage before, at half the contacts"
        );

    private static RungReason? FailedScreen(History history, LocalDate asOf, LadderOptions options)
    {
        EntryTest screen = EntryTests.Find("landing-screen")!;
        IGrouping<LocalDate, ScreenResult>? last = history
            .Screens.Where(s => s.Test == screen.Id && s.Date <= asOf)
            .GroupBy(s => s.Date)
            .MaxBy(g => g.Key);
        if (last is null)
        {
            return null;
        }

        double faults = last.Average(s => s.Value);
        double doubt = screen.StandardUncertainty / Math.Sqrt(last.Count());
        double p = Chance.Keeps(faults, doubt, "at-most", options.LandingScreenFailsAbove, count: true);
        return p >= 0.5
            ? null
            : new RungReason(
                Landing,
                CriterionVerdict.NotMet,
                $"Landing comes first: landing screen {Doubted.Number(faults, doubt)} faults on {last.Key}; above {options.LandingScreenFailsAbove} is failed.",
                p,
                last.Key,
                $"{screen.HowToDoIt}, after landing practice"
            )
            {
                Test = screen.Id,
            };
    }

    /// <summary>The last day that says anything of landings decides; a day on which all went wrong otherwise says nothing.</summary>
    private static RungReason? LoggedFaults(ImmutableArray<CompletedItem> done, LadderOptions options)
    {
        IEnumerable<IGrouping<LocalDate, CompletedItem>> days = done.Where(c => c.LandingFaults is not null)
            .GroupBy(c => c.Date)
            .OrderByDescending(g => g.Key);
        foreach (IGrouping<LocalDate, CompletedItem> day in days)
        {
            int faults = day.Sum(c => c.LandingFaults ?? 0);
            if (faults >= options.LandingFaultsThatHold)
            {
                return new RungReason(
                    Landing,
                    CriterionVerdict.NotMet,
                    $"Landing comes first: {faults} landing faults logged on {day.Key}.",
                    null,
                    day.Key,
                    $"one session of landings without a fault"
                );
            }

            if (Flaws.Without(day, options).Length > 0)
            {
                return null;
            }
        }

        return null;
    }
}
