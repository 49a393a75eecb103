using Jumpwright.Storage.Stores;
using NodaTime;

namespace Jumpwright.App.Desk.Journals;

/// <summary>
/// When a word may take another back: after it, and on the day on which it was written. A slip of the finger is seen that day; later nobody
/// knows any more, and what closed something stays closed.
/// </summary>
internal static class TakingBack
{
    public static bool IsInTime(Instant word, Instant taken, DateTimeZone zone) =>
        word >= taken && word.InZone(zone).Date == taken.InZone(zone).Date;

    public static bool IsInTime(JournalEntry word, JournalEntry taken, DateTimeZone zone) =>
        IsInTime(word.MadeAt, taken.MadeAt, zone);
}
