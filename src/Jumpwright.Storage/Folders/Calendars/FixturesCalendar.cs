using System.Collections.Immutable;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Evaluation;
using Jumpwright.Athletes;
using NodaTime;
using NodaTime.TimeZones;
using Calendar = Ical.Net.Calendar;
using Duration = NodaTime.Duration;
using Occurrence = Ical.Net.DataTypes.Occurrence;

namespace Jumpwright.Storage.Folders.Calendars;

/// <summary>
/// fixtures.ics (RFC 5545): every event that is not cancelled is a fixture on each local day that it touches. A calendar
/// that can't be read stops planning, since no day can then be called free of fixtures.
/// </summary>
internal static class FixturesCalendar
{
    /// <summary>An endless weekly rule is followed this far; years of fixtures, whatever the calendar holds.</summary>
    private const int MostOccurrences = 4000;

    /// <summary>A longer event is no fixture but a season; its first days are taken.</summary>
    private const int MostDays = 31;

    public static ImmutableArray<Fixture> Read(ReadOnlySpan<byte> bytes, DateTimeZone squadZone, ProblemList problems)
    {
        string? text = Csv.TableText.Decode(SquadTables.Fixtures, bytes, ProblemWeight.StopsPlanning, problems);
        if (text is null)
        {
            return [];
        }

        try
        {
            Calendar? calendar = Calendar.Load(text);
            if (calendar is null)
            {
                throw new FormatException("no calendar");
            }

            return Fixtures(calendar, squadZone, problems);
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            problems.Add(
                SquadTables.Fixtures,
                null,
                ProblemWeight.StopsPlanning,
                "is no iCalendar that can be read, so no day is known to be free of fixtures: "
                    + "export the calendar again, or take the file out and write fixtures in squad.yaml. Nothing is planned until then."
            );
            return [];
        }
    }

    private static ImmutableArray<Fixture> Fixtures(Calendar calendar, DateTimeZone squadZone, ProblemList problems)
    {
        foreach (CalendarEvent undated in calendar.Events.Where(e => e.Start is null))
        {
            problems.Add(
                SquadTables.Fixtures,
                null,
                ProblemWeight.StopsPlanning,
                $"the event '{undated.Summary}' has no day: give it one or take it out. Nothing is planned until then."
            );
        }

        var fixtures = new List<Fixture>();
        var strange = new HashSet<string>(StringComparer.Ordinal);
        var options = new EvaluationOptions { MaxUnmatchedIncrementsLimit = 10_000 };
        IEnumerable<Occurrence> occurrences = calendar
            .GetOccurrences<CalendarEvent>(new CalDateTime(1990, 1, 1), options)
            .Take(MostOccurrences);
        foreach (Occurrence occurrence in occurrences)
        {
            if (
                occurrence.Source is not CalendarEvent source
                || string.Equals(source.Status, "CANCELLED", StringComparison.OrdinalIgnoreCase)
            )
            {
                continue;
            }

            fixtures.AddRange(Days(source, occurrence.Period, squadZone, strange));
        }

        foreach (string zone in strange)
        {
            problems.Add(
                SquadTables.Fixtures,
                null,
                ProblemWeight.Note,
                $"the time zone '{zone}' is not known; its days were taken as written and its times left out."
            );
        }

        return fixtures
            .Distinct()
            .OrderBy(f => f.Date)
            .ThenBy(f => f.Start ?? LocalTime.Midnight)
            .ThenBy(f => f.Name, StringComparer.Ordinal)
            .ToImmutableArray();
    }

    private static IEnumerable<Fixture> Days(
        CalendarEvent source,
        Ical.Net.DataTypes.Period period,
        DateTimeZone squadZone,
        HashSet<string> strange
    )
    {
        string name = string.IsNullOrWhiteSpace(source.Summary) ? "fixture" : source.Summary.Trim();
        (LocalDate first, LocalTime? start) = Local(period.StartTime, squadZone, strange);
        LocalDate last = first;
        if (period.EffectiveEndTime is { } end)
        {
            (LocalDate day, LocalTime? time) = Local(end, squadZone, strange);
            bool endsBeforeDay = !end.HasTime || time == LocalTime.Midnight;
            last = LocalDate.Max(first, endsBeforeDay ? day.PlusDays(-1) : day);
        }

        for (int i = 0; i < MostDays && first.PlusDays(i) <= last; i++)
        {
            yield return new Fixture(first.PlusDays(i), i == 0 ? start : null, name);
        }
    }

    /// <summary>The squad's local day and time of an iCalendar date: all-day and floating ones are taken as written.</summary>
    private static (LocalDate Day, LocalTime? Start) Local(
        CalDateTime written,
        DateTimeZone squadZone,
        HashSet<string> strange
    )
    {
        var day = new LocalDate(written.Year, written.Month, written.Day);
        if (!written.HasTime)
        {
            return (day, null);
        }

        var time = new LocalTime(written.Hour, written.Minute, written.Second);
        if (written.IsFloating)
        {
            return (day, time);
        }

        DateTimeZone? zone = written.IsUtc ? DateTimeZone.Utc : Zone(written.TzId);
        if (zone is null)
        {
            strange.Add(written.TzId ?? "");
            return (day, null);
        }

        LocalDateTime local = (day + time).InZoneLeniently(zone).WithZone(squadZone).LocalDateTime;
        return (local.Date, local.TimeOfDay);
    }

    /// <summary>IANA ids, and the names that some office calendars write instead.</summary>
    private static DateTimeZone? Zone(string? id)
    {
        if (id is null)
        {
            return null;
        }

        DateTimeZone? zone = DateTimeZoneProviders.Tzdb.GetZoneOrNull(id);
        return zone
            ?? (
                TzdbDateTimeZoneSource.Default.WindowsMapping.PrimaryMapping.TryGetValue(id, out string? tzdb)
                    ? DateTimeZoneProviders.Tzdb.GetZoneOrNull(tzdb)
                    : null
            );
    }
}
