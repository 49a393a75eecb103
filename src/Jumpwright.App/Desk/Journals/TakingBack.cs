using Jumpwright.Storage.Stores;
using NodaTime;

namespace Jumpwright.App.Desk.Journals;

/// <summary>
/// When a word may take another back: after it, and on the day on which it was written. A slip of the finger is seen that day; later nobody
/// knows any more, and what closed something stays closed.
/// </summary>
internal static class TakingBack
{
    /// <summary>A stop sign stays unless the slip is seen at once: who thinks it over for longer asks a licensed person (house rule).</summary>
    private static readonly Duration AtOnce = Duration.FromMinutes(15);

    /// <summary>Whether a stop sign written then may still be taken back as a slip of the finger.</summary>
    public static bool IsAtOnce(Instant word, Instant taken) => word >= taken && word - taken <= AtOnce;

    public static bool IsInTime(Instant word, Instant taken, DateTimeZone zone) =>
        word >= taken && word.InZone(zone).Date == taken.InZone(zone).Date;

    public static bool IsInTime(JournalEntry word, JournalEntry taken, DateTimeZone zone) =>
        IsInTime(word.MadeAt, taken.MadeAt, zone);
}
