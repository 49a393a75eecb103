using NodaTime;

namespace Jumpwright.Storage.Stores;

/// <summary>One thing that somebody wrote down in the pages: a set done, an event moved, a consent.</summary>
/// <param name="Id">Made where it was written, once and for all; the same id is the same entry.</param>
/// <param name="Kind">What sort of thing it is.</param>
/// <param name="AthleteId">Whom it is about; null when it is about nobody.</param>
/// <param name="SessionId">The session it belongs to; null when none.</param>
/// <param name="MadeAt">When it was written, by the clock of the device that wrote it.</param>
/// <param name="Who">The person or the device that wrote it.</param>
/// <param name="Json">What was written.</param>
public sealed record JournalEntry(
    string Id,
    string Kind,
    string? AthleteId,
    string? SessionId,
    Instant MadeAt,
    string Who,
    string Json
);
