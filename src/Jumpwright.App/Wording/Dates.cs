using System.Globalization;
using NodaTime;
using NodaTime.Text;
using static Jumpwright.App.Wording.TextBook;

namespace Jumpwright.App.Wording;

/// <summary>Days and times as people write them.</summary>
internal static class Dates
{
    private static readonly LocalTimePattern Clock = LocalTimePattern.CreateWithInvariantCulture("HH:mm");

    /// <summary>Monday 4 January 2027.</summary>
    public static string Long(LocalDate day) =>
        Filled("date.long", day, T[$"day.{(int)day.DayOfWeek}"], T[$"month.{day.Month}"]);

    /// <summary>4 Jan 2027.</summary>
    public static string Short(LocalDate day) => Filled("date.short", day, "", T[$"month.{day.Month}.short"]);

    /// <summary>4 Jan 2027 in English, whoever asks: for sentences that have no other language yet.</summary>
    public static string Drawn(LocalDate day) =>
        string.Format(
            CultureInfo.InvariantCulture,
            Of(Languages[0], "date.short")!,
            "",
            day.Day,
            Of(Languages[0], $"month.{day.Month}.short"),
            day.Year
        );

    /// <summary>A day as a sentence of the core or of paper asks for it; what asks for a file's day gets one as people write it.</summary>
    public static string In(string language, LocalDate day, string? format)
    {
        string weekday = Of(language, $"day.{(int)day.DayOfWeek}")!;
        string month = Of(language, $"month.{day.Month}")!;
        string brief = Of(language, $"month.{day.Month}.short")!;
        (string key, string called, string named) = format switch
        {
            "dddd d MMMM uuuu" => ("date.long", weekday, month),
            "d MMMM uuuu" => ("date.short", "", month),
            "d MMM" => ("date.day", "", brief),
            _ => ("date.short", "", brief),
        };
        return string.Format(CultureInfo.InvariantCulture, Of(language, key)!, called, day.Day, named, day.Year);
    }

    /// <summary>Mon 4 Jan.</summary>
    public static string InWeek(LocalDate day) =>
        Filled("date.week", day, T[$"day.{(int)day.DayOfWeek}.short"], T[$"month.{day.Month}.short"]);

    /// <summary>2027-01-04, as files have it.</summary>
    public static string Iso(LocalDate day) => LocalDatePattern.Iso.Format(day);

    /// <summary>17:00.</summary>
    public static string At(LocalTime time) => Clock.Format(time);

    private static string Filled(string key, LocalDate day, string weekday, string month) =>
        T[key, weekday, day.Day, month, day.Year];
}
