namespace Jumpwright.Paper.Layout;

/// <summary>Rows that stay together on one page if a page can hold them.</summary>
internal sealed record Block(IReadOnlyList<Row> Rows)
{
    public double Height => Rows.Sum(r => r.Height);
}
