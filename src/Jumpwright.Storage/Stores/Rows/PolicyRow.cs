namespace Jumpwright.Storage.Stores.Rows;

/// <summary>A setting of the squad.</summary>
internal sealed class PolicyRow
{
    public required string Key { get; init; }

    public required string Value { get; init; }
}
