using System.Collections.Immutable;
using Jumpwright.Storage.Stores.Rows;
using NodaTime;
using NodaTime.Text;

namespace Jumpwright.Storage.Stores;

/// <summary>The journal: written to the end, never altered; handing in the same entry twice changes nothing.</summary>
internal static class Journal
{
    public static JournalReceipt Append(StoreContext context, IReadOnlyList<JournalEntry> entries, Instant received)
    {
        int number = context.Journal.Max(j => (int?)j.Number) ?? 0;
        var added = ImmutableArray.CreateBuilder<string>();
        var known = ImmutableArray.CreateBuilder<string>();
        var different = ImmutableArray.CreateBuilder<string>();
        foreach (JournalEntry entry in entries)
        {
            if (context.Journal.Find(entry.Id) is { } row)
            {
                (ToEntry(row) == entry ? known : different).Add(entry.Id);
                continue;
            }

            context.Journal.Add(
                new JournalRow
                {
                    Id = entry.Id,
                    Number = ++number,
                    Kind = entry.Kind,
                    AthleteId = entry.AthleteId,
                    SessionId = entry.SessionId,
                    MadeAt = entry.MadeAt,
                    ReceivedAt = received,
                    Who = entry.Who,
                    Json = entry.Json,
                }
            );
            added.Add(entry.Id);
        }

        return new JournalReceipt(added.ToImmutable(), known.ToImmutable(), different.ToImmutable());
    }

    public static ImmutableArray<JournalEntry> All(PlainReader plain) =>
        [
            .. plain.Rows(
                "SELECT id, kind, athlete_id, session_id, made_at, who, json FROM journal ORDER BY number",
                r => new JournalEntry(
                    r.GetString(0),
                    r.GetString(1),
                    PlainReader.Text(r, 2),
                    PlainReader.Text(r, 3),
                    InstantPattern.ExtendedIso.Parse(r.GetString(4)).Value,
                    r.GetString(5),
                    r.GetString(6)
                )
            ),
        ];

    private static JournalEntry ToEntry(JournalRow row) =>
        new(row.Id, row.Kind, row.AthleteId, row.SessionId, row.MadeAt, row.Who, row.Json);
}
