namespace Jumpwright.Storage.Stores.Rows;

/// <summary>The squad; one row.</summary>
internal sealed class SquadRow
{
    public int Id { get; init; }

    public required string Name { get; init; }

    public required string TimeZone { get; init; }
}
