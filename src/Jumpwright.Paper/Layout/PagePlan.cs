namespace Jumpwright.Paper.Layout;

/// <summary>Which rows stand on which page.</summary>
internal static class PagePlan
{
    /// <summary>Fills pages from the top. A block is cut only when no page could hold it whole.</summary>
    /// <param name="blocks">In order.</param>
    /// <param name="firstHeight">Room on the first page, pt.</param>
    /// <param name="furtherHeight">Room on each further page, pt.</param>
    public static IReadOnlyList<IReadOnlyList<Row>> Fill(
        IEnumerable<Block> blocks,
        double firstHeight,
        double furtherHeight
    )
    {
        var pages = new List<IReadOnlyList<Row>>();
        var page = new List<Row>();
        double left = firstHeight;
        int heads = 0;

        void Turn(IReadOnlyList<Row> head)
        {
            pages.Add(page);
            page = [.. head];
            heads = head.Count;
            left = furtherHeight - head.Sum(r => r.Height);
        }

        foreach (Block block in blocks)
        {
            double next = furtherHeight - block.Head.Sum(r => r.Height);
            bool fitsTheNextOnly = block.Height > left && block.Height <= next;
            if (page.Count > heads && (block.OnNewPage || fitsTheNextOnly))
            {
                Turn(block.OnNewPage ? [] : block.Head);
            }

            foreach (Row row in block.Rows)
            {
                if (row.Height > left && page.Count > heads)
                {
                    Turn(block.HeadWithin);
                }

                page.Add(row);
                left -= row.Height;
            }
        }

        pages.Add(page);
        return pages;
    }
}
