using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Quantities;
using NodaTime;

namespace Jumpwright.Progression;

/// <summary>What the log says of one exercise: whether it is earned, when, and when it was last kept alive.</summary>
/// <param name="Earned">Enough clean sessions close together, and none since that was not clean.</param>
/// <param name="EverEarned">Its clean sessions would have earned it at some time, flaws between them left aside.</param>
/// <param name="Clean">Days of the clean sessions that count, oldest first.</param>
/// <param name="LastUse">Last day on which it or a harder one was done and went well enough; null when never.</param>
/// <param name="LastFlaw">Last session that started the count anew, in words; null when none.</param>
/// <param name="LastFlawDay">Its day.</param>
internal sealed record CleanSessions(
    bool Earned,
    bool EverEarned,
    ImmutableArray<LocalDate> Clean,
    LocalDate? LastUse,
    Sentence? LastFlaw,
    LocalDate? LastFlawDay
)
{
    /// <summary>
    /// The harder exercise that it was earned through, when its own sessions do not suffice: who lands the harder one
    /// cleanly, and later than any flaw here, owns this one too.
    /// </summary>
    internal Exercise? Through { get; private init; }

    /// <summary>Day of the last clean session, of it or of a harder one; null when there is none.</summary>
    internal LocalDate? LastClean { get; private init; }

    /// <summary>The same, with what the sessions of harder exercises show.</summary>
    internal CleanSessions With(ImmutableArray<(Exercise Exercise, CleanSessions Sessions)> harder)
    {
        ImmutableArray<(Exercise Exercise, CleanSessions Sessions)> speaking =
        [
            .. harder
                .Where(h => h.Sessions.Clean.Length > 0)
                .Where(h => LastFlawDay is not { } flaw || h.Sessions.Clean[^1] > flaw)
                .OrderByDescending(h => h.Sessions.Clean[^1]),
        ];
        CleanSessions with = this with
        {
            EverEarned = EverEarned || harder.Any(h => h.Sessions.EverEarned),
            LastClean = speaking.Select(h => (LocalDate?)h.Sessions.Clean[^1]).Append(LastClean).Max(),
        };
        (Exercise Exercise, CleanSessions Sessions) through = speaking.FirstOrDefault(h => h.Sessions.Earned);
        return Earned || through.Exercise is null
            ? with
            : with with
            {
                Earned = true,
                Clean = through.Sessions.Clean,
                Through = through.Exercise,
            };
    }

    /// <summary>
    /// Reads the log. A session is clean with the least usual reps or more, no landing fault and little pain next
    /// morning; what was not written down counts for nothing. Two landing faults or pain start the count anew.
    /// </summary>
    internal static CleanSessions Of(
        Exercise exercise,
        IReadOnlySet<string> keepers,
        ImmutableArray<CompletedItem> done,
        ImmutableArray<CompletedItem> sound,
        LadderOptions options
    )
    {
        var clean = new List<LocalDate>();
        Sentence? flaw = null;
        LocalDate? flawDay = null;
        var everClean = new List<LocalDate>();
        IEnumerable<IGrouping<(LocalDate Date, string SessionId), CompletedItem>> sessions = done.Where(c =>
                c.ExerciseId == exercise.Id
            )
            .GroupBy(c => (c.Date, c.SessionId))
            .OrderBy(g => g.Key.Date)
            .ThenBy(g => g.Key.SessionId, StringComparer.Ordinal);
        foreach (IGrouping<(LocalDate Date, string SessionId), CompletedItem> session in sessions)
        {
            if (Flaws.Of(session, options) is { } what)
            {
                flaw = $"{what} {session.Key.Date}";
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
                everClean.Add(session.Key.Date);
            }
        }

        LocalDate? last = sound
            .Where(c => c.ExerciseId == exercise.Id || keepers.Contains(c.ExerciseId))
            .Select(c => (LocalDate?)c.Date)
            .Max();
        return new CleanSessions(Enough(clean, options), Enough(everClean, options), [.. clean], last, flaw, flawDay)
        {
            LastClean = clean.Count > 0 ? clean[^1] : null,
        };
    }

    private static bool Enough(List<LocalDate> clean, LadderOptions options)
    {
        int n = options.SessionsToOwn;
        return Enumerable
            .Range(0, Math.Max(0, clean.Count - n + 1))
            .Any(i => Period.DaysBetween(clean[i], clean[i + n - 1]) <= options.OwnWithinDays);
    }
}
