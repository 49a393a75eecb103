using System.Text.Json;
using Jumpwright.Storage.Stores;
using NodaTime;

namespace Jumpwright.App.Desk.Journals;

/// <summary>What somebody says in a page, made into an entry of the journal.</summary>
internal static class JournalWord
{
    /// <summary>An entry said now, with an id of its own.</summary>
    /// <param name="kind">One of <see cref="EntryKinds"/>.</param>
    /// <param name="athlete">Whose; null: about nobody.</param>
    /// <param name="session">Which session, or the day it is said for, since no session is called by a day alone; null: none.</param>
    /// <param name="who">Which page.</param>
    /// <param name="words">What is said.</param>
    public static JournalEntry Now(string kind, string? athlete, string? session, string who, object words) =>
        new(
            Guid.NewGuid().ToString(),
            kind,
            athlete,
            session,
            SystemClock.Instance.GetCurrentInstant(),
            who,
            JsonSerializer.Serialize(words)
        );
}
