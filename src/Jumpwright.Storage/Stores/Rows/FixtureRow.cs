using NodaTime;

namespace Jumpwright.Storage.Stores.Rows;

/// <summary>A fixture.</summary>
internal sealed class FixtureRow
{
    public int Position { get; init; }

    public LocalDate Date { get; init; }

    public LocalTime? Start { get; init; }

    public required string Name { get; init; }
}
