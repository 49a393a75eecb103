using Jumpwright.Athletes;
using Jumpwright.Storage.Stores;
using NodaTime;

namespace Jumpwright.App.Desk.Journals;

/// <summary>
/// What is recorded of a parent's or guardian's consent to a minor's data. Without one, or after it was taken back, no link to the
/// minor's card leaves this machine. Nothing else is closed by it: rules that guard a body need what is known of it, so recording and
/// planning go on; whether the data may be kept at all, local rules decide.
/// </summary>
/// <param name="State">What was said last.</param>
/// <param name="By">Who said it; empty where nobody did.</param>
/// <param name="On">The day it was said on.</param>
internal sealed record Consent(ConsentState State, string By, LocalDate? On)
{
    /// <summary>Years from which a person consents for themselves here: a house rule, where local rules say another age they hold.</summary>
    public const int OfAge = 18;

    /// <summary>Whether an athlete may be a minor; who has no usable birth date may be one.</summary>
    public static bool IsAskedFor(Athlete athlete, LocalDate day) => !(athlete.AgeOn(day) >= OfAge);

    /// <summary>The last word about an athlete.</summary>
    public static Consent Of(string athleteId, IEnumerable<JournalEntry> journal, DateTimeZone zone)
    {
        (JournalEntry Entry, ConsentEntry Word)[] words =
        [
            .. JournalReading
                .LatestFirst(journal.Where(e => e.Kind == EntryKinds.Consent && e.AthleteId == athleteId))
                .Select(e => (e, JournalReading.Read<ConsentEntry>(e)!))
                .Where(e => e.Item2 is not null),
        ];
        return words is not [var last, .. var before]
            ? new(ConsentState.NotRecorded, "", null)
            : new(
                last.Word.Given ? ConsentState.Given
                    : before.Any(w => w.Word.Given) ? ConsentState.TakenBack
                    : ConsentState.Declined,
                last.Word.By,
                last.Entry.MadeAt.InZone(zone).Date
            );
    }

    /// <summary>Whether a link to the athlete's card may be made and followed.</summary>
    public static bool LetsALinkOut(Athlete athlete, Workbook book, IEnumerable<JournalEntry> journal) =>
        !IsAskedFor(athlete, book.Day)
        || Of(athlete.Id, journal, SquadZone.Of(book.Material.Squad.TimeZone)).State == ConsentState.Given;
}
