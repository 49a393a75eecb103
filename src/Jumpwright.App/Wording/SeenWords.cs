using Jumpwright.App.Desk;
using NodaTime;

namespace Jumpwright.App.Wording;

/// <summary>The day a page is seen from, said on every page: what lies after it is not counted, and that must not pass unseen.</summary>
internal static class SeenWords
{
    /// <summary>The sentence as of now, by the squad's own clock.</summary>
    public static string Of(Workbook book) => Of(book, Today(book));

    /// <summary>The sentence on that day.</summary>
    public static string Of(Workbook book, LocalDate today)
    {
        string day =
            book.Day == today
                ? $"Seen from today, {Dates.Long(book.Day)}."
                : $"Seen from {Dates.Long(book.Day)}, not from today ({Dates.Short(today)}).";
        (int later, LocalDate last) = book.Material.Recorded.After(book.Day);
        return later == 0
            ? day
            : $"{day} {later} {(later == 1 ? "jump lies" : "jumps lie")} after that day and {(later == 1 ? "is" : "are")} not counted: "
                + $"end the program and start it with --on {Dates.Iso(last)} to count all.";
    }

    /// <summary>Today where the squad trains.</summary>
    private static LocalDate Today(Workbook book) =>
        SystemClock
            .Instance.GetCurrentInstant()
            .InZone(DateTimeZoneProviders.Tzdb.GetZoneOrNull(book.Material.Squad.TimeZone) ?? DateTimeZone.Utc)
            .Date;
}
