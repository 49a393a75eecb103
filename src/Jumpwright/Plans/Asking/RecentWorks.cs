using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Quantities;
using NodaTime;

namespace Jumpwright.Plans.Asking;

/// <summary>What was done in the days before the plan, or may have been, as far as it still asks for recovery.</summary>
internal static class RecentWorks
{
    /// <summary>An exercise the catalogue does not know asks this much of every tissue. House rule.</summary>
    private const int HoursOfUnknown = 48;

    public static ImmutableArray<RecentWork> Of(
        History history,
        Squad squad,
        DateTimeZone zone,
        Catalogue catalogue,
        LocalDate first
    )
    {
        Instant planBegins = zone.AtStartOfDay(first).ToInstant();
        return
        [
            .. from item in history
                .Completed.Where(c => c.Contacts + c.Sets > 0)
                .Select(c => (c.Date, c.SessionId, c.ExerciseId))
                .Concat(history.PossiblyDone.Select(p => (p.Date, p.SessionId, p.ExerciseId)))
                .Distinct()
            where item.Date <= first
            let end = EndOf(item.Date, item.SessionId, squad, zone)
            from tissue in Enum.GetValues<Tissue>()
            let hours = catalogue.Find(item.ExerciseId) is { } exercise
                ? OrderOfWork.RecoveryHoursOf(exercise, tissue)
                : HoursOfUnknown
            where hours > 0 && end + Duration.FromHours(hours) > planBegins
            orderby end, item.ExerciseId, tissue
            select new RecentWork(tissue, end, hours, item.ExerciseId),
        ];
    }

    /// <summary>The end of the window whose id the log names; the end of the day when it names none.</summary>
    private static Instant EndOf(LocalDate date, string sessionId, Squad squad, DateTimeZone zone)
    {
        TrainingWindow? window = squad
            .Windows.Where(w => w.Day == date.DayOfWeek && SessionSlot.IdOf(date, w.Start) == sessionId)
            .OrderByDescending(w => w.Start)
            .FirstOrDefault();
        return window is null
            ? zone.AtStartOfDay(date.PlusDays(1)).ToInstant()
            : zone.AtLeniently(date.At(window.Start)).ToInstant() + Duration.FromMinutes(window.Minutes);
    }
}
