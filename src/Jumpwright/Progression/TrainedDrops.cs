using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
using NodaTime;

namespace Jumpwright.Progression;

/// <summary>
/// From which boxes the log shows clean sessions, lately. A drop that went wrong takes back what stood as high or higher; a session whose height nobody wrote
/// down shows none. A jump at once after the drop speaks for a landing too, one leg for two; never the other way round.
/// </summary>
/// <param name="Clean">The sessions that count, oldest first.</param>
/// <param name="Sessions">How many of them, on different days, a height needs before a higher one.</param>
public sealed record TrainedDrops(ImmutableArray<TrainedDrop> Clean, int Sessions)
{
    /// <summary>Nothing is known: every drop begins with the first step.</summary>
    public static TrainedDrops None { get; } = new([], LadderOptions.Default.SessionsToOwn);

    /// <summary>The highest box from which this very exercise was done cleanly often enough, m; null: none.</summary>
    public double? OwnM(Exercise exercise) => Often(Clean.Where(d => d.ExerciseId == exercise.Id));

    /// <summary>The highest box from which it, or what asks at least as much of whoever drops, was done cleanly often enough, m; null: none.</summary>
    public double? AnyM(Exercise exercise, Catalogue catalogue) =>
        Often(Clean.Where(d => catalogue.Find(d.ExerciseId) is { } done && Speaks(done, exercise)));

    /// <summary>What the log shows up to that day.</summary>
    internal static TrainedDrops Of(
        ImmutableArray<CompletedItem> done,
        Catalogue catalogue,
        LocalDate asOf,
        LadderOptions options
    )
    {
        var clean = new List<TrainedDrop>();
        foreach (
            IGrouping<(LocalDate Date, string SessionId, string ExerciseId), CompletedItem> session in done.Where(c =>
                    c.Date <= asOf && Period.DaysBetween(c.Date, asOf) <= options.FadesToClosedAfterDays
                )
                .GroupBy(c => (c.Date, c.SessionId, c.ExerciseId))
                .OrderBy(g => g.Key.Date)
                .ThenBy(g => g.Key.SessionId, StringComparer.Ordinal)
        )
        {
            if (catalogue.Find(session.Key.ExerciseId) is not { DropRangeM: not null } exercise)
            {
                continue;
            }

            double? lowest = session.Any(c => c.DropHeightM is null) ? null : session.Min(c => c.DropHeightM);
            if (Flaws.Of(session, options) is not null)
            {
                _ = clean.RemoveAll(d =>
                    (lowest is not { } low || d.HeightM >= low - 1e-9)
                    && catalogue.Find(d.ExerciseId) is { } before
                    && (Speaks(exercise, before) || Speaks(before, exercise))
                );
            }
            else if (
                lowest is { } height
                && session.All(c => c.LandingFaults == 0)
                && session.Any(c => c.PainNextMorning is not null)
                && session.Sum(c => c.Sets * c.Reps) >= exercise.Dose.SetsMin * exercise.Dose.RepsMin
            )
            {
                clean.Add(new(exercise.Id, session.Key.Date, height));
            }
        }

        return new([.. clean], options.SessionsToOwn);
    }

    private static bool Speaks(Exercise done, Exercise asked) =>
        (done.IsDepthJump || !asked.IsDepthJump) && (done.SingleLegLanding || !asked.SingleLegLanding);

    private double? Often(IEnumerable<TrainedDrop> drops) =>
        drops
            .GroupBy(d => d.Date)
            .Select(day => (double?)day.Max(d => d.HeightM))
            .OrderDescending()
            .Skip(Sessions - 1)
            .FirstOrDefault();
}
