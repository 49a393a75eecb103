using Jumpwright.App.Desk;
using NodaTime;
using static Jumpwright.App.Wording.TextBook;

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
                ? T["seen.today", Dates.Long(book.Day)]
                : T["seen.other", Dates.Long(book.Day), Dates.Short(today)];
        (int later, LocalDate last) = book.Material.Recorded.After(book.Day);
        return later switch
        {
            0 => day,
            1 => $"{day} {T["seen.later.one", Dates.Iso(last)]}",
            _ => $"{day} {T["seen.later", later, Dates.Iso(last)]}",
        };
    }

    /// <summary>Today where the squad trains.</summary>
    private static LocalDate Today(Workbook book) =>
        SystemClock.Instance.GetCurrentInstant().InZone(SquadZone.Of(book.Material.Squad.TimeZone)).Date;
}
