namespace Jumpwright.Storage.Stores.Rows;

/// <summary>A piece of kit.</summary>
internal sealed class KitRow
{
    public required string Id { get; init; }

    public int Position { get; init; }

    public int Count { get; init; }
}
