using NodaTime;

namespace Jumpwright.Storage.Stores.Rows;

/// <summary>A training window.</summary>
internal sealed class WindowRow
{
    public int Position { get; init; }

    public IsoDayOfWeek Day { get; init; }

    public LocalTime Start { get; init; }

    public int Minutes { get; init; }
}
