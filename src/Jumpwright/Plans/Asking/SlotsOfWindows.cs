using System.Collections.Immutable;
using Jumpwright.Athletes;
using NodaTime;

namespace Jumpwright.Plans.Asking;

/// <summary>The squad's weekly windows as sessions on days.</summary>
internal static class SlotsOfWindows
{
    /// <summary>
    /// Sessions from that day on, in time order. A start that the change of clocks skips moves forward by the gap; one
    /// that happens twice is the first.
    /// </summary>
    public static ImmutableArray<SessionSlot> Of(Squad squad, DateTimeZone zone, LocalDate from, int weeks)
    {
        var slots = ImmutableArray.CreateBuilder<SessionSlot>();
        HashSet<string> taken = new(StringComparer.Ordinal);
        for (LocalDate day = from; day < from.PlusWeeks(weeks); day = day.PlusDays(1))
        {
            foreach (TrainingWindow window in squad.Windows.Where(w => w.Day == day.DayOfWeek).OrderBy(w => w.Start))
            {
                string half = IdOf(day, window.Start);
                string id = half;
                for (int n = 2; !taken.Add(id); n++)
                {
                    id = $"{half}-{n}";
                }

                slots.Add(
                    new(id, day, window.Start, window.Minutes, zone.AtLeniently(day.At(window.Start)).ToInstant())
                );
            }
        }

        return slots.ToImmutable();
    }

    /// <summary>For example <c>2027-01-05-am</c>: before noon am, from noon on pm.</summary>
    public static string IdOf(LocalDate day, LocalTime start) =>
        $"{day:uuuu-MM-dd}-{(start < LocalTime.Noon ? "am" : "pm")}";
}
