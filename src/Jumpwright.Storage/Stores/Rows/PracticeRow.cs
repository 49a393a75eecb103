using NodaTime;

namespace Jumpwright.Storage.Stores.Rows;

/// <summary>A practice of the sport.</summary>
internal sealed class PracticeRow
{
    public int Position { get; init; }

    public IsoDayOfWeek Day { get; init; }

    public LocalTime? Start { get; init; }

    public int? Minutes { get; init; }

    public string? Sport { get; init; }
}
