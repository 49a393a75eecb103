using NodaTime;

namespace Jumpwright.App.Desk;

/// <summary>The time zone that a squad's days are of.</summary>
internal static class SquadZone
{
    /// <summary>UTC where the squad's own is none that is known; its file is refused before anything is planned.</summary>
    public static DateTimeZone Of(string timeZone) =>
        DateTimeZoneProviders.Tzdb.GetZoneOrNull(timeZone) ?? DateTimeZone.Utc;
}
