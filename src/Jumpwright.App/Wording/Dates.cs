using NodaTime;
using NodaTime.Text;

namespace Jumpwright.App.Wording;

/// <summary>Days and times as people write them.</summary>
internal static class Dates
{
    private static readonly LocalDatePattern LongDay = LocalDatePattern.CreateWithInvariantCulture("dddd d MMMM uuuu");
    private static readonly LocalDatePattern ShortDay = LocalDatePattern.CreateWithInvariantCulture("d MMM uuuu");
    private static readonly LocalDatePattern WeekDay = LocalDatePattern.CreateWithInvariantCulture("ddd d MMM");
    private static readonly LocalTimePattern Clock = LocalTimePattern.CreateWithInvariantCulture("HH:mm");

    /// <summary>Monday 4 January 2027.</summary>
    public static string Long(LocalDate day) => LongDay.Format(day);

    /// <summary>4 Jan 2027.</summary>
    public static string Short(LocalDate day) => ShortDay.Format(day);

    /// <summary>Mon 4 Jan.</summary>
    public static string InWeek(LocalDate day) => WeekDay.Format(day);

    /// <summary>2027-01-04, as files have it.</summary>
    public static string Iso(LocalDate day) => LocalDatePattern.Iso.Format(day);

    /// <summary>17:00.</summary>
    public static string At(LocalTime time) => Clock.Format(time);
}
