namespace Jumpwright.Storage.Stores.Rows;

/// <summary>A file of the squad folder and which bytes it held at the last import.</summary>
internal sealed class TableFileRow
{
    public required string Name { get; init; }

    public required string Sha256 { get; set; }

    /// <summary>It was there once and was not at the last import.</summary>
    public bool Missing { get; set; }
}
