using Jumpwright.Storage.Stores;
using NodaTime;

namespace Jumpwright.App.Desk.Journals;

/// <summary>
/// When a word may take another back: after it, and on the day on which it was written. A slip of the finger is seen that day; later nobody
/// knows any more, and what closed something stays closed. A stop sign stays unless the slip is seen at once: who thinks it over for longer asks a
/// licensed person (house rule).
/// </summary>
internal static class TakingBack
{
    private static readonly Duration AtOnce = Duration.FromMinutes(15);

    public static bool IsInTime(Instant word, JournalEntry taken, DateTimeZone zone) =>
        word >= taken.MadeAt
        && (
            taken.Kind == EntryKinds.Sign
                ? word - taken.MadeAt <= AtOnce
                : word.InZone(zone).Date == taken.MadeAt.InZone(zone).Date
        );

    public static bool IsInTime(JournalEntry word, JournalEntry taken, DateTimeZone zone) =>
        IsInTime(word.MadeAt, taken, zone);
}
