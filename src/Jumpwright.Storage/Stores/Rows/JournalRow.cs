using NodaTime;

namespace Jumpwright.Storage.Stores.Rows;

/// <summary>One thing that somebody wrote down in the pages. Never altered; an import leaves it alone.</summary>
internal sealed class JournalRow
{
    public required string Id { get; init; }

    /// <summary>In the order in which they came in.</summary>
    public int Number { get; init; }

    public required string Kind { get; init; }

    public string? AthleteId { get; init; }

    public string? SessionId { get; init; }

    public Instant MadeAt { get; init; }

    public Instant ReceivedAt { get; init; }

    public required string Who { get; init; }

    public required string Json { get; init; }
}
