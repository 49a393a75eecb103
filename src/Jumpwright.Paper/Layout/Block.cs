namespace Jumpwright.Paper.Layout;

/// <summary>Rows that stay together on one page if a page can hold them.</summary>
internal sealed record Block(IReadOnlyList<Row> Rows)
{
    /// <summary>True when it begins a page whatever room is left.</summary>
    public bool OnNewPage { get; init; }

    /// <summary>What stands above it again when it begins a page because the one before was full: the heads of its columns.</summary>
    public IReadOnlyList<Row> Head { get; init; } = [];

    /// <summary>The same when a page's end cuts it, and it goes on.</summary>
    public IReadOnlyList<Row> HeadWithin { get; init; } = [];

    public double Height => Rows.Sum(r => r.Height);
}
