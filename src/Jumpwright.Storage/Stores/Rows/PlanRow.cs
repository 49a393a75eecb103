using NodaTime;

namespace Jumpwright.Storage.Stores.Rows;

/// <summary>A plan that was kept, as the JSON of contracts §3.</summary>
internal sealed class PlanRow
{
    public int Number { get; init; }

    public LocalDate From { get; init; }

    public int Weeks { get; init; }

    public Instant SavedAt { get; init; }

    public required string Json { get; init; }
}
