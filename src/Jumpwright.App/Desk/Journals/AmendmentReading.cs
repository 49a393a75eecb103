using System.Collections.Immutable;
using Jumpwright.Plans;
using Jumpwright.Storage.Stores;
using NodaTime;
using NodaTime.Text;

namespace Jumpwright.App.Desk.Journals;

/// <summary>What was asked of the plan by hand, from the journal. Of two words about one thing the later counts.</summary>
internal static class AmendmentReading
{
    private static readonly LocalTimePattern Clock = LocalTimePattern.CreateWithInvariantCulture("HH:mm");

    public static Amendments Of(IEnumerable<JournalEntry> entries)
    {
        var locks = new Dictionary<(string Session, string Athlete, string Exercise), int>();
        var missed = new HashSet<(string Session, string Athlete)>();
        var without = new HashSet<(string Session, string Athlete, string Exercise)>();
        var moved = ImmutableArray.CreateBuilder<MovedSession>();
        foreach (JournalEntry entry in entries.Where(e => e.SessionId is not null))
        {
            string session = entry.SessionId!;
            switch (entry.Kind)
            {
                case EntryKinds.Lock when entry.AthleteId is { } athlete:
                    if (JournalReading.Read<LockEntry>(entry) is { Exercise: { } exercise } locked)
                    {
                        locks.Remove((session, athlete, exercise));
                        if (locked.Holds)
                        {
                            locks[(session, athlete, exercise)] = locked.Sets;
                            without.Remove((session, athlete, exercise));
                        }
                    }

                    break;
                case EntryKinds.TakenOut when entry.AthleteId is { } athlete:
                    if (JournalReading.Read<TakenOutEntry>(entry) is not { } taken)
                    {
                        break;
                    }

                    if (taken.Exercise is not { } one)
                    {
                        _ = taken.Holds ? missed.Add((session, athlete)) : missed.Remove((session, athlete));
                    }
                    else if (taken.Holds)
                    {
                        without.Add((session, athlete, one));
                        locks.Remove((session, athlete, one));
                    }
                    else
                    {
                        without.Remove((session, athlete, one));
                    }

                    break;
                case EntryKinds.Moved:
                    if (
                        JournalReading.Read<MovedEntry>(entry) is { Date: { } day, Start: { } at }
                        && LocalDatePattern.Iso.Parse(day) is { Success: true } date
                        && Clock.Parse(at) is { Success: true } start
                    )
                    {
                        moved.Add(new MovedSession(session, date.Value, start.Value));
                    }

                    break;
                default:
                    break;
            }
        }

        return new Amendments
        {
            // Who misses a session does nothing of it, whatever was locked there before.
            Locks =
            [
                .. locks
                    .Where(l => !missed.Contains((l.Key.Session, l.Key.Athlete)))
                    .Select(l => new LockedItem(l.Key.Session, l.Key.Athlete, l.Key.Exercise, l.Value)),
            ],
            Out =
            [
                .. missed.Select(m => new TakenOut(m.Session, m.Athlete, null)),
                .. without.Select(w => new TakenOut(w.Session, w.Athlete, w.Exercise)),
            ],
            Moved = moved.ToImmutable(),
        };
    }
}
