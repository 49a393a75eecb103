namespace Jumpwright.Paper.Layout;

/// <summary>Rows that stay together on one page if a page can hold them.</summary>
internal sealed record Block(IReadOnlyList<Row> Rows)
{
    /// <summary>True when it begins a page whatever room is left.</summary>
    public bool OnNewPage { get; init; }

    public double Height => Rows.Sum(r => r.Height);
}
