using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
using NodaTime;

namespace Jumpwright.Progression;

/// <summary>What the log says of one exercise: whether it is earned, when, and when it was last kept alive.</summary>
/// <param name="Earned">Enough clean sessions close together, and none since that was not clean.</param>
/// <param name="Clean">Days of the clean sessions that count, oldest first.</param>
/// <param name="LastUse">Last day on which it or a harder one was done; null when never.</param>
/// <param name="LastFlaw">Last session that started the count anew, in words; null when none.</param>
/// <param name="LastFlawDay">Its day.</param>
internal sealed record CleanSessions(
    bool Earned,
    ImmutableArray<LocalDate> Clean,
    LocalDate? LastUse,
    string? LastFlaw,
    LocalDate? LastFlawDay
)
{
    /// <summary>
    /// The harder exercise that it was earned through, when its own sessions do not suffice: who lands the harder one
    /// cleanly, and later than any flaw here, owns this one too.
    /// </summary>
    internal Exercise? Through { get; private init; }

    /// <summary>The same, with what the sessions of harder exercises show.</summary>
    internal CleanSessions With(IEnumerable<(Exercise Exercise, CleanSessions Sessions)> harder) =>
        Earned
            ? this
            : harder
                .Where(h => h.Sessions.Earned && (LastFlawDay is not { } flaw || h.Sessions.Clean[^1] > flaw))
                .OrderByDescending(h => h.Sessions.Clean[^1])
                .Select(h => this with { Earned = true, Clean = h.Sessions.Clean, Through = h.Exercise })
                .FirstOrDefault(this);

    /// <summary>
    /// Reads the log. A session is clean with the least usual reps or more, no landing fault and little pain next
    /// morning; what was not written down counts for nothing. Two landing faults or pain start the count anew.
    /// </summary>
    internal static CleanSessions Of(
        Exercise exercise,
        IReadOnlySet<string> keepers,
        ImmutableArray<CompletedItem> done,
        LadderOptions options
    )
    {
        var clean = new List<LocalDate>();
        string? flaw = null;
        LocalDate? flawDay = null;
        IEnumerable<IGrouping<(LocalDate Date, string SessionId), CompletedItem>> sessions = done.Where(c =>
                c.ExerciseId == exercise.Id
            )
            .GroupBy(c => (c.Date, c.SessionId))
            .OrderBy(g => g.Key.Date)
            .ThenBy(g => g.Key.SessionId, StringComparer.Ordinal);
        foreach (IGrouping<(LocalDate Date, string SessionId), CompletedItem> session in sessions)
        {
            int faults = session.Sum(c => c.LandingFaults ?? 0);
            double pain = session.Max(c => c.PainNextMorning) ?? 0;
            if (faults >= options.LandingFaultsThatHold || pain > options.PainNextMorningAtMost)
            {
                string what =
                    pain > options.PainNextMorningAtMost
                        ? $"pain {pain:0.#}/10 the morning after"
                        : $"{faults} landing faults on";
                flaw = $"{what} {Day(session.Key.Date)}";
                flawDay = session.Key.Date;
                clean.Clear();
                continue;
            }

            bool landed = exercise.ContactsPerRep == 0 || session.All(c => c.LandingFaults == 0);
            bool painKnown = session.Any(c => c.PainNextMorning is not null);
            bool enough = session.Sum(c => c.Sets * c.Reps) >= exercise.Dose.SetsMin * exercise.Dose.RepsMin;
            if (landed && painKnown && enough && (clean.Count == 0 || clean[^1] != session.Key.Date))
            {
                clean.Add(session.Key.Date);
            }
        }

        LocalDate? last = done.Where(c => c.ExerciseId == exercise.Id || keepers.Contains(c.ExerciseId))
            .Select(c => (LocalDate?)c.Date)
            .Max();
        return new CleanSessions(Enough(clean, options), [.. clean], last, flaw, flawDay);
    }

    internal static string Day(LocalDate day) => NodaTime.Text.LocalDatePattern.Iso.Format(day);

    private static bool Enough(List<LocalDate> clean, LadderOptions options)
    {
        int n = options.SessionsToOwn;
        return Enumerable
            .Range(0, Math.Max(0, clean.Count - n + 1))
            .Any(i => Period.DaysBetween(clean[i], clean[i + n - 1]) <= options.OwnWithinDays);
    }
}
