using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using Ical.Net;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;
using Jumpwright.Plans;
using NodaTime;
using Calendar = Ical.Net.Calendar;

namespace Jumpwright.Storage.Folders.Calendars;

/// <summary>
/// Planned sessions as iCalendar (RFC 5545), for the calendars people already look at. Those lie with strangers, so an event holds
/// when and how long, and nothing of what anybody does or why.
/// </summary>
public static class SessionsCalendar
{
    /// <summary>
    /// One event a session in which something is planned; the same plan gives the same bytes. A session keeps its UID when it is
    /// planned again, so that taking the file in twice makes no second event.
    /// </summary>
    /// <param name="plan">The plan.</param>
    /// <param name="request">What it answers: its first day is the stamp of every event.</param>
    /// <param name="squadName">Stands in every event.</param>
    /// <param name="athleteId">Only this athlete's sessions; null takes all.</param>
    public static string Write(Plan plan, PlanRequest request, string squadName, string? athleteId = null)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(request);
        var calendar = new Calendar { ProductId = "-//Jumpwright//sessions//EN", Version = "2.0" };
        CalDateTime stamp = Utc(request.From.AtMidnight().InUtc().ToInstant());
        foreach (PlannedSession session in SessionsOf(plan, athleteId))
        {
            SessionSlot slot = session.Slot;
            int athletes = session.Athletes.Count(a => !a.Items.IsEmpty);
            calendar.Events.Add(
                new CalendarEvent
                {
                    Uid = UidOf(slot.Id, squadName, athleteId),
                    DtStamp = stamp,
                    DtStart = Utc(slot.StartUtc),
                    DtEnd = Utc(slot.EndUtc),
                    Summary = $"Jump training, {squadName}",
                    Description = athleteId is null
                        ? $"{athletes} {(athletes == 1 ? "athlete" : "athletes")}. What each does stands on the coach's sheet of the day."
                        : "What to do stands on the card of the day; it is valid on that day only.",
                }
            );
        }

        return new CalendarSerializer().SerializeToString(calendar)
            ?? throw new InvalidOperationException("A calendar without text.");
    }

    /// <summary>The sessions in which that athlete, or anybody, has something to do.</summary>
    public static ImmutableArray<PlannedSession> SessionsOf(Plan plan, string? athleteId)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return
        [
            .. plan.Sessions.Where(s =>
                s.Athletes.Any(a => !a.Items.IsEmpty && (athleteId is null || a.AthleteId == athleteId))
            ),
        ];
    }

    /// <summary>UTC needs no table of time zones in the file, and every calendar shows it in its reader's own.</summary>
    private static CalDateTime Utc(Instant instant) => new(instant.ToDateTimeUtc());

    private static string UidOf(string sessionId, string squadName, string? athleteId)
    {
        string squad = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(squadName)))[..12];
        return $"{sessionId}{(athleteId is null ? "" : "-" + athleteId)}-{squad}@jumpwright";
    }
}
